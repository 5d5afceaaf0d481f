//! Declares what a part can have in several kinds: each kind's fields stand in one place, and from there come the
//! type, the way from a field's name to its number, the list of its numbers, and the reading of a file.

/// The type of a field: a number that must be there, one that may be empty, or a choice from a list.
macro_rules! field_type {
    (number $quantity:ty) => { Entered<$quantity> };
    (optional $quantity:ty) => { Option<Entered<$quantity>> };
    (choice $list:ty) => { $list };
}

/// Gives back the place of a number when it is the one asked for; a choice has none.
macro_rules! field_slot {
    (choice, $value:ident, $asked:ident, $name:path) => {
        let _ = $value;
    };
    ($number:ident, $value:ident, $asked:ident, $name:path) => {
        if $asked == $name {
            return Some($value);
        }
    };
}

/// Adds a number to the list of numbers.
macro_rules! field_listed {
    (choice, $list:ident, $name:path) => {};
    ($number:ident, $list:ident, $name:path) => {
        $list.push($name);
    };
}

/// Takes a field out of the written form.
macro_rules! field_taken {
    (optional, $form:ident.$field:ident, $of:literal) => {
        $form.$field.take()
    };
    ($kind:ident, $form:ident.$field:ident, $of:literal) => {
        need!($form.$field, $of)
    };
}

/// Declares a type with its kinds; see the head of this file.
macro_rules! kinds {
    (
        $(#[$doc:meta])*
        $type:ident, kinds $kind_type:ident, fields $names:ident, form $form:ident {$(
            $(#[$kind_doc:meta])*
            $kind:ident, $of:literal {$(
                $(#[$field_doc:meta])*
                $field:ident: $way:ident $inner:ty, $name:ident;
            )*}
        )*}
    ) => {
        #[derive(Clone, Debug, PartialEq, Serialize)]
        $(#[$doc])*
        #[serde(tag = "kind", rename_all = "kebab-case")]
        pub enum $type {$(
            $(#[$kind_doc])*
            $kind {$(
                $(#[$field_doc])*
                $field: field_type!($way $inner),
            )*},
        )*}

        #[doc = concat!("The kinds of [`", stringify!($type), "`], without their figures.")]
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
        #[serde(rename_all = "kebab-case")]
        pub enum $kind_type {$(
            $(#[$kind_doc])*
            $kind,
        )*}

        impl $kind_type {
            /// Every kind, in the order in which they are offered.
            pub const ALL: &'static [Self] = &[$(Self::$kind),*];
        }

        impl $type {
            /// Which kind it is.
            pub const fn kind(&self) -> $kind_type {
                match self {$(
                    Self::$kind { .. } => $kind_type::$kind,
                )*}
            }

            /// The number that a field of this kind holds, or may hold.
            pub(super) fn slot(&self, asked: $names) -> Option<&dyn Slot> {
                match self {$(
                    Self::$kind { $($field),* } => {
                        $(field_slot!($way, $field, asked, $names::$name);)*
                    }
                )*}
                None
            }

            /// The same to change it.
            pub(super) fn slot_mut(&mut self, asked: $names) -> Option<&mut dyn Slot> {
                match self {$(
                    Self::$kind { $($field),* } => {
                        $(field_slot!($way, $field, asked, $names::$name);)*
                    }
                )*}
                None
            }

            /// Its fields of numbers, in the order of the page.
            pub(crate) fn numbers(&self) -> Vec<$names> {
                let mut numbers = Vec::new();
                match self {$(
                    Self::$kind { .. } => {
                        $(field_listed!($way, numbers, $names::$name);)*
                    }
                )*}
                numbers
            }

            /// Whether this kind has a field, filled or not: a number or a choice.
            pub fn has(&self, asked: $names) -> bool {
                match self {$(
                    Self::$kind { .. } => false $(|| asked == $names::$name)*,
                )*}
            }

            /// Takes the fields of its kind out of the written form; the rest is left in it.
            pub(super) fn take(kind: $kind_type, form: &mut $form) -> Result<(Self, &'static str), FormError> {
                Ok(match kind {$(
                    $kind_type::$kind => (
                        Self::$kind {$(
                            $field: field_taken!($way, form.$field, $of),
                        )*},
                        $of,
                    ),
                )*})
            }
        }
    };
}

pub(super) use {field_listed, field_slot, field_taken, field_type, kinds};
