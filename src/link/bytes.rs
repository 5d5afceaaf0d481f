//! The bytes of a link, piece by piece. Frozen.
//!
//! | piece | bytes |
//! | --- | --- |
//! | a whole number | seven bits a byte, low first; the eighth bit says that another byte follows |
//! | a text | the length of its UTF-8 in bytes as a whole number, then that |
//! | what may be missing | 0, or 1 and the piece |
//! | a list | how many items as a whole number, then the items |
//! | a kind | its number in one byte, then its fields |
//!
//! The fields of a type follow one another without names.

/// What a link of one version holds as a piece of its own.
pub(super) trait Read<const VERSION: u8> {
    /// Takes it from the front.
    fn read(from: &mut Reader<'_>) -> Self;
}

/// What the newest version of a link holds as a piece of its own.
pub(super) trait Write {
    /// Adds it; `None` when a link has no form for it.
    fn write(&self, to: &mut Writer) -> Option<()>;
}

/// The bytes that are not read yet.
///
/// When they end too soon or hold something else, reading fails, and gives noughts and empty lists from then on:
/// whoever reads asks once, at the end, whether it did. A question at every piece made reading three times as long.
pub(super) struct Reader<'b> {
    rest: &'b [u8],
    failed: bool,
}

impl<'b> Reader<'b> {
    pub(super) const fn new(bytes: &'b [u8]) -> Self {
        Self {
            rest: bytes,
            failed: false,
        }
    }

    /// Whether all that was read was right, and nothing is left.
    pub(super) const fn is_done(&self) -> bool {
        self.rest.is_empty() && !self.failed
    }

    /// All that is not read yet; `None` when reading failed.
    pub(super) const fn rest(&self) -> Option<&'b [u8]> {
        if self.failed { None } else { Some(self.rest) }
    }

    pub(super) const fn fail(&mut self) {
        self.rest = &[];
        self.failed = true;
    }

    /// What was read, or its default and a failure.
    pub(super) fn must<T: Default>(&mut self, read: Option<T>) -> T {
        read.unwrap_or_else(|| {
            self.fail();
            T::default()
        })
    }

    pub(super) fn byte(&mut self) -> u8 {
        let Some((first, rest)) = self.rest.split_first() else {
            self.fail();
            return 0;
        };
        self.rest = rest;
        *first
    }

    pub(super) fn whole(&mut self) -> u64 {
        let mut whole = 0;
        for shift in (0..u64::BITS).step_by(7) {
            let byte = self.byte();
            let bits = u64::from(byte & 0x7f);
            // The last byte has room for one bit.
            if (bits << shift) >> shift != bits {
                break;
            }
            whole |= bits << shift;
            if byte < 0x80 {
                return whole;
            }
        }
        self.fail();
        0
    }

    /// Whether what may be missing is there.
    pub(super) fn is_there(&mut self) -> bool {
        match self.byte() {
            0 => false,
            1 => true,
            _ => {
                self.fail();
                false
            }
        }
    }

    /// A text of at most `most` characters.
    pub(super) fn text(&mut self, most: usize) -> String {
        let length = usize::try_from(self.whole()).ok();
        let cut = length.and_then(|length| self.rest.split_at_checked(length));
        let text = cut.and_then(|(text, rest)| {
            self.rest = rest;
            core::str::from_utf8(text).ok()
        });
        let short = text.filter(|text| text.chars().count() <= most);
        self.must(short).to_owned()
    }

    /// A list of at most `most` items; it takes no memory for more than it has read.
    pub(super) fn list<const VERSION: u8, T: Read<VERSION>>(&mut self, most: usize) -> Vec<T> {
        self.list_of(most, T::read)
    }

    /// The same with items that are read in a way of their own.
    pub(super) fn list_of<T>(&mut self, most: usize, read: impl FnMut(&mut Self) -> T) -> Vec<T> {
        let count = self.whole();
        self.items(count, most, read)
    }

    /// So many items, and at most `most`.
    pub(super) fn items<T>(
        &mut self,
        count: u64,
        most: usize,
        mut read: impl FnMut(&mut Self) -> T,
    ) -> Vec<T> {
        let count = usize::try_from(count).ok();
        let count = self.must(count.filter(|count| *count <= most));
        let mut list = Vec::new();
        while list.len() < count && !self.failed {
            list.push(read(self));
        }
        list
    }
}

/// The bytes written so far.
#[derive(Default)]
pub(super) struct Writer {
    bytes: Vec<u8>,
}

impl Writer {
    pub(super) fn into_bytes(self) -> Vec<u8> {
        self.bytes
    }

    pub(super) fn byte(&mut self, byte: u8) {
        self.bytes.push(byte);
    }

    pub(super) fn whole(&mut self, whole: u64) {
        let mut rest = whole;
        while 0x80 <= rest {
            self.byte(low_bits(rest) | 0x80);
            rest >>= 7;
        }
        self.byte(low_bits(rest));
    }

    /// Whether what may be missing is there.
    pub(super) fn is_there(&mut self, there: bool) {
        self.byte(u8::from(there));
    }

    /// A text of at most `most` characters.
    pub(super) fn text(&mut self, text: &str, most: usize) -> Option<()> {
        if most < text.chars().count() {
            return None;
        }
        self.count(text.len())?;
        self.bytes.extend_from_slice(text.as_bytes());
        Some(())
    }

    /// A list of at most `most` items.
    pub(super) fn list<T: Write>(&mut self, list: &[T], most: usize) -> Option<()> {
        self.list_of(list, most, T::write)
    }

    /// The same with items that are written in a way of their own.
    pub(super) fn list_of<T>(
        &mut self,
        list: &[T],
        most: usize,
        mut write: impl FnMut(&T, &mut Self) -> Option<()>,
    ) -> Option<()> {
        if most < list.len() {
            return None;
        }
        self.count(list.len())?;
        list.iter().try_for_each(|item| write(item, self))
    }

    fn count(&mut self, count: usize) -> Option<()> {
        self.whole(u64::try_from(count).ok()?);
        Some(())
    }
}

/// The lowest seven bits.
fn low_bits(whole: u64) -> u8 {
    let [low, ..] = whole.to_le_bytes();
    low & 0x7f
}

/// The way from bytes to types whose fields follow one another in the order given.
macro_rules! read_fields {
    ($version:literal, $($type:ident { $($field:ident),* $(,)? })*) => {$(
        impl Read<$version> for $type {
            fn read(from: &mut Reader<'_>) -> Self {
                Self { $($field: Read::<$version>::read(from)),* }
            }
        }
    )*};
}

/// The way back.
macro_rules! write_fields {
    ($($type:ident { $($field:ident),* $(,)? })*) => {$(
        impl Write for $type {
            fn write(&self, to: &mut Writer) -> Option<()> {
                $(self.$field.write(to)?;)*
                Some(())
            }
        }
    )*};
}

/// The way from bytes to types with several kinds, each with its number.
macro_rules! read_kinds {
    ($version:literal, $($type:ident {
        $($number:literal $kind:ident { $($field:ident $(= $value:expr)?),* })*
    })*) => {$(
        impl Read<$version> for $type {
            fn read(from: &mut Reader<'_>) -> Self {
                match from.byte() {
                    $($number => Self::$kind { $($field: read_or!(from, $version $(, $value)?)),* },)*
                    _ => {
                        from.fail();
                        // That gives noughts now, and so the first kind.
                        Read::<$version>::read(from)
                    }
                }
            }
        }
    )*};
}

/// The next piece, or what a field is that this version did not have.
macro_rules! read_or {
    ($from:ident, $version:literal) => {
        Read::<$version>::read($from)
    };
    ($from:ident, $version:literal, $value:expr) => {
        $value
    };
}

/// The way back.
macro_rules! write_kinds {
    ($($type:ident { $($number:literal $kind:ident { $($field:ident),* })* })*) => {$(
        impl Write for $type {
            fn write(&self, to: &mut Writer) -> Option<()> {
                match self {$(
                    Self::$kind { $($field),* } => {
                        to.byte($number);
                        $($field.write(to)?;)*
                    }
                )*}
                Some(())
            }
        }
    )*};
}

pub(super) use {read_fields, read_kinds, read_or, write_fields, write_kinds};
