//! What the finished shank goes into.

use serde::{Deserialize, Serialize};

use super::form::{FormError, ReceiverForm, need};
use super::item_field::ReceiverField;
use super::kinds::{field_listed, field_slot, field_taken, field_type, kinds};
use super::slot::Slot;
use crate::quantity::{Entered, Length};
use crate::tables::{ColletSize, HoleClass, SeatLoad, ShankSize, SleeveDuty, WorkMaterial};

kinds! {
    /// What the finished shank goes into. How deep it takes the shank, and how much it must grip at least, stand
    /// beside it in [`Wanted`](super::Wanted); left empty there they are the usual ones of the receiver.
    #[derive(Deserialize)]
    #[serde(try_from = "ReceiverForm")]
    Receiver, kinds ReceiverKind, fields ReceiverField, form ReceiverForm {
        /// Something of one's own: nothing is known of it but what is entered.
        Own, "an own receiver" {
            /// The radius or chamfer at its mouth; `None` is not known, and nothing is said of the fillet.
            edge: optional Length, Edge;
        }
        /// A collet.
        Collet, "a collet" {
            /// Its system and size.
            collet: choice ColletSize, Collet;
        }
        /// A holder that clamps a flat with a screw.
        SideLock, "a side-lock holder" {
            /// The standard shank that it takes.
            shank: choice ShankSize, Shank;
        }
        /// A hydraulic chuck.
        Hydraulic, "a hydraulic chuck" {
        }
        /// A plain bore.
        PlainBore, "a plain bore" {
            /// The class of its hole, of the diameter wanted.
            hole: choice HoleClass, Hole;
            /// The radius or chamfer at its mouth; `None` is not known, and nothing is said of the fillet.
            edge: optional Length, Edge;
        }
        /// The inner ring of a ball bearing.
        Bearing, "a bearing" {
            /// How it is loaded.
            load: choice SeatLoad, Load;
            /// The least chamfer of the ring, `r_s`.
            ring_chamfer: number Length, RingChamfer;
        }
        /// A repair sleeve that is put on the shank, and finished with it.
        Sleeve, "a repair sleeve" {
            /// What it must carry.
            duty: choice SleeveDuty, SleeveDuty;
            /// What it is made of.
            material: choice WorkMaterial, SleeveMaterial;
            /// Its finished outside diameter.
            outside: number Length, Outside;
            /// The radius or chamfer at its mouth; `None` is not known, and nothing is said of the fillet.
            edge: optional Length, Edge;
        }
    }
}

impl Default for Receiver {
    /// Nothing known.
    fn default() -> Self {
        Self::Own { edge: None }
    }
}
