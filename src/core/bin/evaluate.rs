//! Answers JSON requests from standard input, one a line, on standard output,
//! in order. See [`coldseat_core::evaluator`].

use std::io::{self, BufRead, BufReader, BufWriter, Read, Write};
use std::process::ExitCode;

use coldseat_core::evaluator::{LONGEST_LINE, answer, refuse_line};

fn main() -> ExitCode {
    match run() {
        Ok(()) => ExitCode::SUCCESS,
        // Whoever read the answers has gone: nothing is left to say.
        Err(e) if e.kind() == io::ErrorKind::BrokenPipe => ExitCode::FAILURE,
        Err(e) => {
            eprintln!("evaluate: {e}");
            ExitCode::FAILURE
        }
    }
}

fn run() -> io::Result<()> {
    let mut input = BufReader::with_capacity(1 << 16, io::stdin().lock());
    let mut output = BufWriter::new(io::stdout().lock());
    let mut line = Vec::new();
    loop {
        line.clear();
        // One byte more than is taken, and the line break.
        let most = LONGEST_LINE as u64 + 2;
        if input.by_ref().take(most).read_until(b'\n', &mut line)? == 0 {
            break;
        }
        let ended = line.ends_with(b"\n");
        let reply = if !ended && line.len() as u64 == most {
            skip_line(&mut input)?;
            Some(refuse_line(&format!(
                "longer than {LONGEST_LINE} bytes: split the request"
            )))
        } else {
            match core::str::from_utf8(&line) {
                Ok(text) => answer(text.trim_end_matches(['\n', '\r'])),
                Err(_) => Some(refuse_line("not UTF-8 text: send JSON in UTF-8")),
            }
        };
        if let Some(reply) = reply {
            output.write_all(reply.as_bytes())?;
            output.write_all(b"\n")?;
        }
        // A person or a program may be waiting for each answer.
        if input.buffer().is_empty() {
            output.flush()?;
        }
    }
    output.flush()
}

/// Reads on to the end of a line without keeping it.
fn skip_line(input: &mut impl BufRead) -> io::Result<()> {
    loop {
        let chunk = input.fill_buf()?;
        if chunk.is_empty() {
            return Ok(());
        }
        match chunk.iter().position(|&b| b == b'\n') {
            Some(at) => {
                input.consume(at + 1);
                return Ok(());
            }
            None => {
                let all = chunk.len();
                input.consume(all);
            }
        }
    }
}
