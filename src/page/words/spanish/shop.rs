//! Spanish: the lathe, the tool, the holding, dialling in, pinned passes and rates.

use skimwright::job::{
    Aim, DialPlane, DialReads, EdgeField, Field, GearsError, HoldingField, JawFace, Job,
    MachineField, PinField, RateField, Rigidity, Support,
};

use super::fields::{lower_first, out_of_bounds, short, unread};
use super::instruments;
use crate::page::shelf::{Question, Shelf};
use crate::page::words::{OfShop, Words};

pub(super) const fn machine_label(field: MachineField) -> &'static str {
    match field {
        MachineField::Name => "Nombre del torno",
        MachineField::Rigidity => "Construcción del torno",
        MachineField::Speeds => "Velocidades del husillo",
        MachineField::SlowestSpeed => "Velocidad más lenta",
        MachineField::FastestSpeed => "Velocidad más rápida",
        MachineField::Feeds => "Avances longitudinales",
        MachineField::FinestFeed => "Avance más fino",
        MachineField::CoarsestFeed => "Avance más basto",
        MachineField::Power => "Potencia del motor",
        MachineField::Efficiency => "Parte que llega al husillo",
        MachineField::Torque => "Mayor par en el husillo",
        MachineField::Swing => "⌀ admitido sobre el carro transversal",
        MachineField::ChuckTopSpeed => "Velocidad máxima del plato",
        MachineField::Graduation => "Carro transversal, una división",
        MachineField::DialReads => "El tambor del carro transversal marca",
        MachineField::CompoundGraduation => "Carro orientable, una división",
        MachineField::FineInfeed => "Penetración fina, una división",
        MachineField::HeadStiffness => "Rigidez en el plato",
        MachineField::TailStiffness => "Rigidez en el contrapunto",
        MachineField::PostStiffness => "Rigidez en el portaherramientas",
    }
}

pub(super) const fn machine_hint(field: MachineField) -> Option<&'static str> {
    Some(match field {
        MachineField::Rigidity => "Cuenta donde no se ha medido la rigidez.",
        MachineField::SlowestSpeed | MachineField::FastestSpeed => {
            "Como está marcado en el accionamiento. Vacío: lo habitual en su clase."
        }
        MachineField::FinestFeed | MachineField::CoarsestFeed => {
            "Lo que avanza el carro en una vuelta del husillo. Vacío: lo habitual en su clase."
        }
        MachineField::Power => "La de la chapa del motor. Vacío: lo habitual en su clase.",
        MachineField::Efficiency => {
            "Lo que dejan correas, engranajes y rodamientos. Vacío: lo habitual en su clase."
        }
        MachineField::Torque => {
            "Donde patina la correa o salta el motor. Vacío: solo limita la potencia."
        }
        MachineField::Swing => {
            "El mayor diámetro que libra el carro transversal. Puede quedar vacío."
        }
        MachineField::ChuckTopSpeed => "Marcada en el cuerpo del plato. Puede quedar vacío.",
        MachineField::Graduation => {
            "Como en el tambor: las pasadas van entonces por divisiones enteras. Vacío: no."
        }
        MachineField::DialReads => {
            "Diámetro: una división de 0,05 quita 0,05 del diámetro. Radio: el propio carro se mueve 0,05."
        }
        MachineField::CompoundGraduation => {
            "Como está marcada: lo que se mueve el propio carro. Puede quedar vacío."
        }
        MachineField::FineInfeed => {
            "En radio, con el carro orientable girado, como 0,001 mm. Puede quedar vacío."
        }
        MachineField::HeadStiffness => {
            "Empuja el plato de lado con un dinamómetro, o cuélgale un peso; lee el comparador al otro lado. Fuerza \
             entre movimiento. Vacío: lo habitual en su clase."
        }
        MachineField::TailStiffness => {
            "Lo mismo en el punto giratorio, con la caña tan fuera como al trabajar. Vacío: lo habitual en su clase."
        }
        MachineField::PostStiffness => {
            "Lo mismo en la punta de la herramienta, apartándola de la pieza. Vacío: lo habitual en su clase."
        }
        MachineField::Name | MachineField::Speeds | MachineField::Feeds => return None,
    })
}

/// The note under a list of speeds or feeds.
pub(in crate::page::words) const LIST_HINT: &str = "De la chapa del cabezal, en cualquier orden, con espacios: 70 115 200. Una lista vacía detiene el plan.";

/// The label of the list itself, below the choice between a list and stepless.
pub(in crate::page::words) const fn list_label(field: Field) -> &'static str {
    match field {
        Field::Machine(MachineField::Feeds) => "Lista de avances",
        _ => "Lista de velocidades",
    }
}

pub(super) const fn edge_label(field: EdgeField) -> &'static str {
    match field {
        EdgeField::Name => "Nombre de la herramienta",
        EdgeField::NoseRadius => "Radio de punta",
        EdgeField::CuttingEdgeAngle => "Ángulo de posición",
        EdgeField::Rake => "Ángulo de desprendimiento",
        EdgeField::LeastFeed => "Menor avance de la herramienta",
        EdgeField::MostFeed => "Mayor avance de la herramienta",
        EdgeField::LeastDepth => "Menor profundidad de corte",
        EdgeField::MostDepth => "Mayor profundidad de corte",
        EdgeField::Price => "Precio de una plaquita",
        EdgeField::Edges => "Filos que tiene",
        EdgeField::RegrindTime => "Tiempo de reafilado",
    }
}

pub(super) const fn edge_hint(field: EdgeField) -> Option<&'static str> {
    Some(match field {
        EdgeField::NoseRadius => {
            "En el código de la plaquita (04 es 0,4 mm), o con galga de radios. Vacío: lo habitual en la herramienta."
        }
        EdgeField::CuttingEdgeAngle => {
            "Entre el filo y el sentido del avance: 90° tornea un resalte a escuadra. Vacío: lo habitual en la \
             herramienta."
        }
        EdgeField::Rake => {
            "Negativo donde la cara se inclina hacia delante, contra la viruta. Vacío: lo habitual en la herramienta."
        }
        EdgeField::LeastFeed | EdgeField::MostFeed => {
            "En la caja de la plaquita, para su rompevirutas. Vacío: lo habitual en la herramienta."
        }
        EdgeField::LeastDepth | EdgeField::MostDepth => {
            "En radio, de la caja de la plaquita. Vacío: lo habitual en la herramienta."
        }
        EdgeField::Price => "Lo que cuesta una nueva. Puede quedar vacío.",
        EdgeField::Edges => {
            "Las puntas a las que se puede girar. Vacío: lo habitual en la herramienta."
        }
        EdgeField::RegrindTime => {
            "Sacarla del torno y volver a ponerla a la altura del eje. Vacío: lo habitual."
        }
        EdgeField::Name => return None,
    })
}

pub(super) const fn holding_label(field: HoldingField) -> &'static str {
    match field {
        HoldingField::Support => "Sujeta en",
        HoldingField::Jaws => "Garras",
        HoldingField::GripLength => "Longitud de cabeza en las garras",
        HoldingField::GripForce => "Fuerza de todas las garras",
        HoldingField::TailForce => "Fuerza del punto giratorio",
        HoldingField::NearPlace => "Dónde se lee cerca",
        HoldingField::FarPlace => "Dónde se lee lejos",
    }
}

pub(super) const fn holding_hint(field: HoldingField) -> Option<&'static str> {
    Some(match field {
        HoldingField::GripLength => "A lo largo del eje. Vacío: lo habitual.",
        HoldingField::GripForce => {
            "De los papeles del plato o con un medidor de fuerza. Vacío: lo habitual en un plato apretado a mano."
        }
        HoldingField::TailForce => "A lo largo del eje, como empuja la caña. Vacío: lo habitual.",
        HoldingField::NearPlace | HoldingField::FarPlace => {
            "Desde el resalte hacia fuera; negativo en la cabeza."
        }
        HoldingField::Support | HoldingField::Jaws => return None,
    })
}

pub(super) const fn pin_label(field: PinField) -> &'static str {
    match field {
        PinField::After => "Diámetro tras ella",
        PinField::Infeed => "Penetración, en radio",
        PinField::Speed => "Velocidad de giro",
        PinField::Feed => "Avance",
    }
}

pub(super) const fn pin_hint(field: PinField) -> Option<&'static str> {
    match field {
        PinField::Speed | PinField::Feed => Some("Vacío: lo elige el plan."),
        PinField::After | PinField::Infeed => None,
    }
}

pub(super) const fn rate_label(field: RateField) -> &'static str {
    match field {
        RateField::Currency => "Moneda",
        RateField::PerHour => "Una hora de taller",
        RateField::Least => "Precio mínimo por trabajo",
        RateField::Consumables => "Discos, abrasivo, aceite",
        RateField::Postage => "Portes y embalaje",
    }
}

pub(super) const fn rate_hint(field: RateField) -> &'static str {
    match field {
        RateField::Currency => "Como la escribes tú: todas las sumas van en ella.",
        RateField::PerHour => "Vacío: no se calcula el coste.",
        RateField::Least | RateField::Consumables | RateField::Postage => "Vacío: nada.",
    }
}

/// A quarter of the turn, counted from 0.
pub(super) const fn quarter(quarter: u8) -> &'static str {
    match quarter {
        0 => "En la garra 1",
        1 => "Un cuarto de vuelta más",
        2 => "Media vuelta más",
        _ => "Tres cuartos más",
    }
}

/// The name of a reading of the indicator where it stands alone.
pub(super) fn reading(plane: DialPlane, at: u8) -> String {
    let plane = match plane {
        DialPlane::Near => "Comparador cerca del plato",
        DialPlane::Far => "Comparador más afuera",
    };
    format!("{plane}: {}", lower_first(quarter(at)))
}

/// The name of a pinned pass, counted from 1.
pub(in crate::page::words) fn pin(index: u8) -> String {
    format!("Pasada fija {}", u16::from(index) + 1)
}

pub(in crate::page::words) fn pin_line(after: &str, infeed: &str) -> String {
    format!("a ⌀{after}, penetración {infeed}")
}

/// A planned pass as one that can be pinned.
pub(in crate::page::words) fn planned(number: usize, after: &str) -> String {
    format!("Pasada {number}, a ⌀{after}")
}

/// What a list comes to.
pub(in crate::page::words) fn gears(
    words: Words,
    field: Field,
    count: usize,
    from: &str,
    to: &str,
) -> String {
    let (one, more, none) = match field {
        Field::Machine(MachineField::Feeds) => ("avance", "avances", "Aún ningún avance."),
        _ => ("velocidad", "velocidades", "Aún ninguna velocidad."),
    };
    match count {
        0 => none.to_owned(),
        1 => format!("{}, {to}", words.count(count, one, more)),
        _ => format!("{}, de {from} a {to}", words.count(count, one, more)),
    }
}

/// What is wrong with a list, and where.
pub(in crate::page::words) fn bad_list(words: Words, field: Field, error: &GearsError) -> String {
    let what = match error {
        GearsError::Unread { piece, error } => format!("«{}»: {}", short(piece), unread(error)),
        GearsError::OutOfBounds { piece } => {
            format!("«{}»: {}", short(piece), out_of_bounds(words, field))
        }
        GearsError::TooMany => format!(
            "Una lista puede tener {} números como mucho.",
            Job::MOST_GEARS
        ),
    };
    format!("{what} El plan sigue con la última lista que se pudo leer.")
}

pub(super) const fn text(text: OfShop) -> &'static str {
    match text {
        OfShop::Tool => "La herramienta en cifras",
        OfShop::Lathe => "Torno",
        OfShop::Holding => "Sujeción",
        OfShop::Dialling => "Centrar con comparador",
        OfShop::DiallingLead => {
            "Comparador en un redondo que tiene que girar centrado, y la pieza girada a mano. Lee con la garra 1 \
             arriba y en cada cuarto de vuelta; más, donde el palpador se mete. Mejor en dos sitios, bien separados."
        }
        OfShop::Pins => "Pasadas fijas",
        OfShop::PinsLead => "Pasadas que pones tú. El resto se planea alrededor.",
        OfShop::NoPins => "Ninguna: todas las pasadas son del plan.",
        OfShop::PinPlanned => "Fijar una del plan",
        OfShop::AddPin => "Fijar una pasada mía",
        OfShop::ToolChoice => "Qué herramientas tornean este metal",
        OfShop::ToolChoiceLead => {
            "En su superficie, por dureza y grupo. Las velocidades son un comienzo, no una promesa."
        }
        OfShop::WhyGrind => "Por qué rectificar mejor",
        OfShop::StepTimes => "Tiempos de los pasos",
        OfShop::StepTimesLead => {
            "Cada vez que se hace un paso. Lo vacío es lo habitual, o sale del tiempo de «Por lo general»."
        }
        OfShop::Rates => "Tarifas",
        OfShop::Plane(DialPlane::Near) => "Cerca del plato",
        OfShop::Plane(DialPlane::Far) => "Más afuera",
        OfShop::Stepless => "Cualquiera, sin escalones",
        OfShop::Listed => "Las de una lista",
        OfShop::Support(None) => "Según el extremo: con punto si hay avellanado de centrado",
        OfShop::Support(Some(Support::Chuck)) => "Solo el plato",
        OfShop::Support(Some(Support::ChuckAndCentre)) => "Plato y punto giratorio",
        OfShop::Support(Some(Support::BetweenCentres)) => "Entre puntos",
        OfShop::Support(Some(Support::Collet)) => "Pinza",
        OfShop::Jaws(None) => "Lo habitual: se cuentan como lisas",
        OfShop::Jaws(Some(JawFace::Smooth)) => "Lisas: rectificadas, gastadas o blandas",
        OfShop::Jaws(Some(JawFace::Serrated)) => "Estriadas, con dientes",
        OfShop::Rigidity(Rigidity::Light) => "Ligero: torno de banco, o gastado",
        OfShop::Rigidity(Rigidity::Medium) => "Medio: torno de taller en buen estado",
        OfShop::Rigidity(Rigidity::Heavy) => "Pesado: torno pesado, con las guías ajustadas",
        OfShop::DialReads(DialReads::Diameter) => "Diámetro",
        OfShop::DialReads(DialReads::Radius) => "Radio: lo que se mueve el carro",
        OfShop::Aim(Aim::LeastTime) => "Menor tiempo",
        OfShop::Aim(Aim::LeastCost) => "Menor coste",
        OfShop::Mine(Shelf::Lathes) => "Mis tornos",
        OfShop::Mine(Shelf::Tools) => "Mis herramientas",
        OfShop::Mine(Shelf::Instruments(_)) => "Mis instrumentos",
        OfShop::Keep(Shelf::Instruments(_)) => "Guardar instrumento",
        OfShop::KeepNeedsName(Shelf::Instruments(_)) => {
            "Dale arriba un nombre al instrumento, y se podrá guardar para otros trabajos."
        }
        OfShop::Instruments(text) => instruments::text(text),
        OfShop::Keep(Shelf::Lathes) => "Guardar torno",
        OfShop::Keep(Shelf::Tools) => "Guardar herramienta",
        OfShop::KeepNeedsName(Shelf::Lathes) => {
            "Dale arriba un nombre al torno, y se podrá guardar para otros trabajos."
        }
        OfShop::KeepNeedsName(Shelf::Tools) => {
            "Dale arriba un nombre a la herramienta, y se podrá guardar para otros trabajos."
        }
        OfShop::Kept => "Guardado en este navegador tal como está aquí.",
        OfShop::ShelfFull => "No caben más: quita antes uno.",
        OfShop::ShelfUnread => {
            "Lo que había guardado en este navegador no se pudo leer. Se queda como está hasta que guardes algo nuevo, \
             que ocupará su lugar."
        }
        OfShop::TakeIn => "Pasar a este trabajo",
        OfShop::ShelfRefused => {
            "NO guardado: este navegador no conserva nada. El propio trabajo lleva torno, herramienta e instrumentos; \
             envíate su enlace a ti mismo."
        }
        OfShop::AskTitle(Question::Replace(_)) => "¿Sustituir?",
        OfShop::AskTitle(Question::Remove(..)) => "¿Quitar?",
        OfShop::AskTitle(Question::Forget(_)) => "¿Olvidar?",
        OfShop::Replace => "Sustituir",
        OfShop::AskNo => "Dejarlo así",
    }
}

/// What is asked before something that is kept goes.
pub(in crate::page::words) fn question(question: Question, name: &str) -> String {
    match question {
        Question::Replace(_) => format!(
            "«{name}» ya está guardado, con otras cifras. ¿Poner en su lugar las de este trabajo?"
        ),
        Question::Forget(_) => instruments::ask_forget(name),
        Question::Remove(..) => {
            format!(
                "¿Quitar «{name}» de lo guardado en este navegador? Los trabajos conservan su copia."
            )
        }
    }
}
