//! The commands: `cargo xtask setup | build | serve | test | bench`.

use std::path::PathBuf;
use std::process::ExitCode;

use lexopt::prelude::{Long, Short, Value, ValueExt as _};
use xtask::rows::Desk;
use xtask::run::{Outcome, Trouble};
use xtask::server::{FolderServer, Port, Reach, address_in_network};
use xtask::setup::{Purpose, set_up};
use xtask::{bench, check, fuzz, layout, lighthouse, one_file, page, shop, simulate};

const HELP: &str = "\
Usage: cargo xtask COMMAND

  serve [--port N] [--into DIR]   set up, build the page, serve it on this machine
        [--lan]                   to every machine of this network, for a first look
        [--shop]                  by Apache, with a shop's folder (kept in target/) beside it
  build [--into DIR]              set up, build the page into DIR (dist/)
  single-file [--into DIR]        the whole page as one file that needs no server,
                                  coldseat.html in DIR (dist-single/)
  test [--only CHECK,CHECK]       set up, run every check, or some
       [--quick]                  what needs no tool and no browser, for the hand
  lighthouse                      set up, build, hold the page against Lighthouse
  bench                           set up, time the core here and in a browser
  simulate [--steps N] [--seed N] tabs, devices and failing stores by chance
  fuzz [--seconds N]              hostile bytes for whatever reads them, N s a target
  setup                           set up for all of these
  serve-folder DIR [--port N]     serve a finished page as it is; port 0 for any

Checks, in their order: ";

/// The port that is tried first.
const PORT: u16 = 8137;

fn main() -> ExitCode {
    match command() {
        Ok(()) => ExitCode::SUCCESS,
        Err(trouble) => {
            eprintln!("\nfailed: {trouble}");
            ExitCode::FAILURE
        }
    }
}

/// The command line, read.
#[derive(Default)]
struct Wishes {
    command: Option<String>,
    folder: Option<PathBuf>,
    port: Option<u16>,
    seconds: Option<u64>,
    steps: Option<u64>,
    seed: Option<u64>,
    into: Option<PathBuf>,
    only: Option<String>,
    row: Option<Desk>,
    lan: bool,
    shop: bool,
    quick: bool,
}

fn read() -> Result<Wishes, lexopt::Error> {
    let mut wishes = Wishes::default();
    let mut parser = lexopt::Parser::from_env();
    while let Some(argument) = parser.next()? {
        match argument {
            Long("port") => wishes.port = Some(parser.value()?.parse()?),
            Long("steps") => wishes.steps = Some(parser.value()?.parse()?),
            Long("seed") => wishes.seed = Some(parser.value()?.parse()?),
            Long("seconds") => wishes.seconds = Some(parser.value()?.parse()?),
            Long("into") => wishes.into = Some(layout::absolute(parser.value()?.into())),
            Long("only") => wishes.only = Some(parser.value()?.string()?),
            Long("row") => wishes.row = Some(Desk::at(parser.value()?.into())),
            Long("lan") => wishes.lan = true,
            Long("shop") => wishes.shop = true,
            Long("quick") => wishes.quick = true,
            Long("help") | Short('h') => wishes.command = Some("help".to_owned()),
            Value(value) if wishes.command.is_none() => wishes.command = Some(value.string()?),
            Value(value) if wishes.folder.is_none() => {
                wishes.folder = Some(layout::absolute(value.into()));
            }
            other => return Err(other.unexpected()),
        }
    }
    Ok(wishes)
}

fn command() -> Outcome<()> {
    let see_help = "see `cargo xtask help`";
    let wishes = read().map_err(|error| Trouble::new(error.to_string(), see_help))?;
    let dist = wishes.into.clone().unwrap_or_else(layout::dist_folder);
    match (wishes.command.as_deref(), wishes.folder) {
        (Some("help") | None, None) => {
            println!("{HELP}{}", check::names().join(", "));
            Ok(())
        }
        (Some("setup"), None) => set_up(Purpose::Tests).map(drop),
        (Some("build"), None) => page::build(&set_up(Purpose::Page)?, &dist),
        (Some("serve"), None) => {
            page::build(&set_up(Purpose::Page)?, &dist)?;
            let reach = if wishes.lan {
                Reach::Network
            } else {
                Reach::Here
            };
            let port = wishes.port.unwrap_or(PORT);
            if wishes.shop {
                return serve_shop(&dist, port, reach);
            }
            serve(&dist, Port::From(port), reach)
        }
        (Some("serve-folder"), Some(folder)) => serve(
            &folder,
            Port::Exactly(wishes.port.unwrap_or(PORT)),
            Reach::Here,
        ),
        (Some("single-file"), None) => {
            let into = wishes.into.unwrap_or_else(layout::single_folder);
            single_file(&into)
        }
        (Some("fuzz"), None) => fuzz::fuzz(wishes.seconds.unwrap_or(fuzz::LONG)),
        (Some("simulate"), None) => {
            let steps = wishes.steps.unwrap_or(simulate::STEPS);
            simulate::simulate(steps, wishes.seed.unwrap_or(simulate::SEED))
        }
        (Some("lighthouse"), None) => lighthouse::lighthouse(),
        (Some("bench"), None) => bench::bench(),
        (Some("test"), None) if wishes.quick && wishes.only.is_some() => Err(Trouble::new(
            "--quick and --only each choose the checks",
            see_help,
        )),
        (Some("test"), None) if wishes.quick => {
            let (only, share) = check::QUICK;
            check::check(Some(only), None, share)
        }
        (Some("test"), None) => check::check(wishes.only.as_deref(), wishes.row.as_ref(), 100),
        (Some(other), _) => Err(Trouble::new(
            format!("`{other}` is no command, or its folder is missing or one too many"),
            see_help,
        )),
        (None, Some(_)) => Err(Trouble::new("no command given", see_help)),
    }
}

/// Builds the page and makes one file of it.
fn single_file(into: &std::path::Path) -> Outcome<()> {
    let dist = layout::dist_folder();
    page::build(&set_up(Purpose::Page)?, &dist)?;
    let path = one_file::write(&dist, into)?;
    let size = path.metadata().map(|data| data.len()).unwrap_or_default();
    println!("[build] {:.1} kB  {}", size as f64 / 1000.0, path.display());
    Ok(())
}

/// Serves the page by Apache, a shop's folder beside it that outlives the server.
fn serve_shop(dist: &std::path::Path, port: u16, reach: Reach) -> Outcome<()> {
    xtask::setup::apache()?;
    let root = layout::target_folder().join("shop-served");
    shop::lay_out(dist, &root)?;
    let server = shop::ShopServer::start(shop::Kind::Apache, &root, port, reach)?;
    println!("\nColdseat is at http://localhost:{port}/   (Ctrl-C ends it)");
    if reach == Reach::Network {
        match address_in_network(port) {
            Some(address) => println!("from this network at {address}"),
            None => println!("from this network at this machine's own address, same port"),
        }
        println!(
            "Whoever is in this network can read and write the folder: no password is asked \
             for, and without https nothing is kept for work without a network."
        );
    }
    println!("its shop's folder is {}", root.join("shop").display());
    println!("Settings, The shop's folder: give each device a name and join.");
    server.ends()
}

fn serve(folder: &std::path::Path, port: Port, reach: Reach) -> Outcome<()> {
    let server = FolderServer::open(folder, port, reach)?;
    // Tests start servers by the dozen and gain nothing by it.
    let server = if matches!(port, Port::From(_)) {
        server.packing()
    } else {
        server
    };
    println!("\nColdseat is at {}   (Ctrl-C ends it)", server.address());
    if reach == Reach::Network {
        match server.address_in_network() {
            Some(address) => println!("from this network at {address}"),
            None => println!("from this network at this machine's own address, same port"),
        }
        println!(
            "Without https another machine keeps nothing for work without a network, \
             and may clear what it stores: for a first look only. README, Hosting."
        );
    }
    server.answer()
}
