//! Roles and names: how a person's tools see the page.

/// A role of the accessibility tree.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Role {
    /// A message that interrupts.
    Alert,
    /// Something to press.
    Button,
    /// An on/off box.
    CheckBox,
    /// A choice that opens a list.
    ComboBox,
    /// A window over the page.
    Dialog,
    /// A figure with its caption.
    Figure,
    /// Fields that belong together.
    Group,
    /// A heading of any level.
    Heading,
    /// A drawing or picture.
    Image,
    /// A link.
    Link,
    /// A list.
    List,
    /// An item of a list.
    ListItem,
    /// The page's main part.
    Main,
    /// A named set of links.
    Navigation,
    /// An item of a choice.
    Option,
    /// One of several.
    Radio,
    /// One of several, as a group.
    RadioGroup,
    /// A named part of the page.
    Region,
    /// A row of a table.
    Row,
    /// A value to drag.
    Slider,
    /// A message that waits its turn; the output of a computation.
    Status,
    /// A switch.
    Switch,
    /// A tab.
    Tab,
    /// A table.
    Table,
    /// A field to type in.
    TextBox,
}

impl Role {
    /// The role's word in the accessibility tree, and its other word if browsers
    /// differ.
    pub(crate) fn words(self) -> &'static [&'static str] {
        match self {
            Self::Alert => &["alert"],
            Self::Button => &["button"],
            Self::CheckBox => &["checkbox"],
            // WebKitGTK calls a choice the button that opens it.
            Self::ComboBox => &["combobox", "button"],
            Self::Dialog => &["dialog", "alertdialog"],
            Self::Figure => &["figure"],
            Self::Group => &["group"],
            Self::Heading => &["heading"],
            Self::Image => &["image", "img", "graphics-document"],
            Self::Link => &["link"],
            Self::List => &["list"],
            Self::ListItem => &["listitem"],
            Self::Main => &["main"],
            Self::Navigation => &["navigation"],
            Self::Option => &["option"],
            Self::Radio => &["radio"],
            Self::RadioGroup => &["radiogroup"],
            Self::Region => &["region"],
            Self::Row => &["row"],
            Self::Slider => &["slider"],
            Self::Status => &["status"],
            Self::Switch => &["switch"],
            Self::Tab => &["tab"],
            Self::Table => &["table"],
            Self::TextBox => &["textbox", "spinbutton", "searchbox"],
        }
    }

    /// Elements that may have the role, generously; the browser decides.
    pub(crate) fn candidates(self) -> &'static str {
        match self {
            Self::Alert => "[role=alert]",
            Self::Button => "button,summary,input[type=button],input[type=submit],[role=button]",
            Self::CheckBox => "input[type=checkbox],[role=checkbox]",
            Self::ComboBox => "select,input[list],[role=combobox]",
            Self::Dialog => "dialog,[role=dialog],[role=alertdialog]",
            Self::Figure => "figure,[role=figure]",
            Self::Group => "fieldset,details,[role=group]",
            Self::Heading => "h1,h2,h3,h4,h5,h6,[role=heading]",
            Self::Image => "img,svg,[role=img],[role=image],[role=graphics-document]",
            Self::Link => "a[href],[role=link]",
            Self::List => "ul,ol,menu,[role=list]",
            Self::ListItem => "li,[role=listitem]",
            Self::Main => "main,[role=main]",
            Self::Navigation => "nav,[role=navigation]",
            Self::Option => "option,[role=option]",
            Self::Radio => "input[type=radio],[role=radio]",
            Self::RadioGroup => "[role=radiogroup]",
            Self::Region => "section,[role=region]",
            Self::Row => "tr,[role=row]",
            Self::Slider => "input[type=range],[role=slider]",
            Self::Status => "output,[role=status]",
            Self::Switch => "[role=switch]",
            Self::Tab => "[role=tab]",
            Self::Table => "table,[role=table]",
            Self::TextBox => "input,textarea,[role=textbox],[role=spinbutton]",
        }
    }
}

/// How a name is compared, after its spaces are made single.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Name {
    /// The whole name.
    Exactly(String),
    /// Some part of it.
    Containing(String),
}

/// A name that contains these words.
pub fn containing(words: &str) -> Name {
    Name::Containing(words.to_owned())
}

impl From<&str> for Name {
    fn from(name: &str) -> Self {
        Self::Exactly(name.to_owned())
    }
}

impl Name {
    /// The words looked for.
    pub(crate) fn words(&self) -> &str {
        match self {
            Self::Exactly(words) | Self::Containing(words) => words,
        }
    }

    /// Whether a name as computed by the browser is this one.
    pub(crate) fn fits(&self, computed: &str) -> bool {
        let computed = single_spaced(computed);
        match self {
            Self::Exactly(words) => computed == single_spaced(words),
            Self::Containing(words) => computed.contains(&single_spaced(words)),
        }
    }
}

/// Text with every run of white space as one space.
pub(crate) fn single_spaced(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}
