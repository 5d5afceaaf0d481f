//! The one way from what is asked for to the language that says it.

/// What the language in use says: `said!(words, cut::step(step))` asks its module `cut`.
///
/// Figures get the decimal mark of the language on their way.
macro_rules! said {
    ($words:expr, $($message:tt)*) => {
        $crate::page::words::language::Said::marked(
            spoken!($words, $($message)*),
            $words.tongue,
        )
    };
}

/// The same as it stands: for texts that hold what a person wrote, or whose figures have their mark already.
///
/// Every language is named here, so that a module or a message that one of them lacks does not compile.
macro_rules! spoken {
    ($words:expr, $module:ident::$message:ident $(($($given:expr),* $(,)?))?) => {
        match $words.tongue.language() {
            $crate::page::words::Language::English => {
                $crate::page::words::in_english::$module::$message $(($($given),*))?
            }
            $crate::page::words::Language::German => {
                $crate::page::words::german::$module::$message $(($($given),*))?
            }
            $crate::page::words::Language::Spanish => {
                $crate::page::words::spanish::$module::$message $(($($given),*))?
            }
        }
    };
}
