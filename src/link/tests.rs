//! Tests of the link that need its inside.

use super::*;
use crate::demo::demo_jobs;
use crate::job::{
    Bore, BoreBottom, BoreEnd, Cut, Datum, Feature, HeadPiece, Hole, Place, Receiver, Section,
    Tolerance, Turned,
};
use crate::plan::number_fields;
use crate::quantity::{Entered, Entry, Number, Term};
use crate::tables::{SleeveDuty, TaperSize, WorkMaterial};

/// A text with a right checksum around any body.
fn wrap(body: &[u8]) -> String {
    let bytes = [body, &checksum(VERSION, body)].concat();
    format!("{VERSION}{}", BASE64URL_NOPAD.encode(&bytes))
}

pub(super) fn body(job: &Job) -> Vec<u8> {
    v2::write(job).unwrap()
}

/// The longest job: every list full, and every number a sum of `terms` numbers that take most bytes.
fn largest(terms: usize) -> Job {
    let mut job = Job {
        title: "😀".repeat(Job::MOST_TITLE_CHARACTERS),
        ..Job::default()
    };
    let any = job.wanted.diameter.clone();
    let place = Some(Place {
        from: Datum::FreeEnd,
        start: any.clone(),
    });
    let turned = Turned::Taper {
        shoulder_diameter: any.clone(),
        end_diameter: any.clone(),
        length: any.clone(),
        diameter_error: Some(any.clone()),
        length_error: Some(any.clone()),
    };
    let section = Section {
        turned,
        place: place.clone(),
    };
    job.part.sections = vec![section; Job::MOST_SECTIONS];
    let cut = Cut::Keyway {
        width: any.clone(),
        depth: any.clone(),
        length: any.clone(),
    };
    job.part.features = vec![Feature { cut, place }; Job::MOST_FEATURES];
    let hole = Hole::Stepped {
        diameter: any.clone(),
        depth: any.clone(),
        step_diameter: any.clone(),
        step_depth: any.clone(),
        bottom: BoreBottom::Flat,
    };
    let bore = Bore {
        hole,
        end: BoreEnd::HeadEnd,
        off_centre: Some(any.clone()),
    };
    job.part.bores = vec![bore; Job::MOST_BORES];
    let piece = HeadPiece {
        diameter: any.clone(),
        length: any.clone(),
    };
    job.part.head_beyond = vec![piece; Job::MOST_HEAD_BEYOND];
    job.wanted.tolerance = Tolerance::Limits {
        upper: any.clone(),
        lower: any.clone(),
    };
    job.wanted.receiver = Receiver::Sleeve {
        duty: SleeveDuty::FullTorque,
        material: WorkMaterial::TitaniumAlloy,
        outside: any.clone(),
        edge: Some(any),
    };
    for field in number_fields(&job) {
        let dimension = field.bounds().unwrap().dimension;
        let unit = crate::quantity::Unit::ALL
            .into_iter()
            .rfind(|unit| unit.dimension() == dimension)
            .unwrap();
        let term = Term {
            negative: true,
            number: Number::Fraction {
                whole: u16::MAX,
                numerator: u16::MAX,
                denominator: u16::MAX,
            },
            unit,
        };
        assert!(job.set_entry(field, Entry::from_terms(vec![term; terms])));
    }
    job
}

#[test]
fn the_largest_job_fits() {
    for (terms, length) in [(1, 2967), (Entry::MOST_TERMS, 20_007)] {
        let job = largest(terms);
        let text = encode(&job).unwrap();
        assert_eq!(text.len(), length, "with {terms} terms");
        assert!(text.len() <= MOST_CHARACTERS);
        assert_eq!(decode(&text), Ok(job));
    }
}

#[test]
fn an_example_takes_few_characters() {
    for job in demo_jobs() {
        let text = encode(&job).unwrap();
        assert!(text.len() < 300, "{}: {}", job.title, text.len());
        assert_eq!(decode(&text), Ok(job));
    }
}

#[test]
fn too_large_a_job_has_no_link() {
    let long = Job {
        title: "é".repeat(Job::MOST_TITLE_CHARACTERS + 1),
        ..Job::default()
    };
    let mut sections = Job::default();
    let section = sections.part.sections[0].clone();
    sections.part.sections = vec![section; Job::MOST_SECTIONS + 1];
    let mut bores = demo_jobs()[0].clone();
    let bore = bores.part.bores[0].clone();
    bores.part.bores = vec![bore; Job::MOST_BORES + 1];
    for job in [long, sections, bores] {
        assert_eq!(encode(&job), Err(LinkError::TooLarge));
    }
}

#[test]
fn what_stands_around_a_link_is_left_aside() {
    let job = Job::default();
    let text = encode(&job).unwrap();
    for around in [
        format!("#{text}"),
        format!(" \n#{text}\r\n"),
        format!("https://shop.example/plan/#{text}"),
    ] {
        assert_eq!(decode(&around), Ok(job.clone()), "{around}");
    }
}

#[test]
fn each_wrong_text_has_its_own_error() {
    let good = encode(&Job::default()).unwrap();
    let cases = [
        (String::new(), LinkError::Empty),
        (" # ".to_owned(), LinkError::Empty),
        ("a".repeat(MOST_CHARACTERS + 1), LinkError::TooLong),
        ("section-2".to_owned(), LinkError::Newer { version: 's' }),
        ("A".to_owned() + &good, LinkError::NotALink),
        ("élan".to_owned(), LinkError::NotALink),
        (format!("a+{good}"), LinkError::NotALink),
        (format!("{good}="), LinkError::NotALink),
        (
            good.replacen('b', "c", 1),
            LinkError::Newer { version: 'c' },
        ),
        ("a".to_owned(), LinkError::Damaged),
        ("aAAA".to_owned(), LinkError::Damaged),
        (good[..good.len() - 1].to_owned(), LinkError::Damaged),
        (wrap(&[]), LinkError::BeyondLimits),
        (wrap(&[0xff; 40]), LinkError::BeyondLimits),
    ];
    for (text, error) in cases {
        assert_eq!(decode(&text), Err(error), "{text}");
        assert!(!error.to_string().is_empty() && !error.code().is_empty());
    }
}

#[test]
fn a_whole_text_around_wrong_bytes_is_beyond_limits() {
    let mut job = Job::default();
    job.part.sections = vec![
        Turned::StandardTaper {
            taper: TaperSize::all().last().unwrap(),
            past_gauge: job.wanted.length.clone(),
            length: None,
        }
        .into(),
    ];
    let right = body(&job);
    assert_eq!(decode(&wrap(&right)), Ok(job.clone()));
    for cut in 0..right.len() {
        assert_eq!(
            decode(&wrap(&right[..cut])),
            Err(LinkError::BeyondLimits),
            "cut to {cut}"
        );
    }
    let longer = [right.as_slice(), &[0]].concat();
    assert_eq!(decode(&wrap(&longer)), Err(LinkError::BeyondLimits));
    // The title is empty: one byte. Then the material, three numbers of two bytes, and the number of sections.
    let (material, sections, kind, taper) = (1, 8, 9, 10);
    for (place, byte) in [
        (material, 200),
        (2, 14),   // An empty field where a number must stand.
        (2, 0x70), // A unit that lengths do not have.
        (2, 12),   // A shape that numbers do not have.
        (2, 0x1f), // A sum of one term.
        (2, 0x9f), // A sum of nine terms.
        (sections, 13),
        (kind, 8),
        (taper, 250),
    ] {
        let mut wrong = right.clone();
        wrong[place] = byte;
        assert_eq!(
            decode(&wrap(&wrong)),
            Err(LinkError::BeyondLimits),
            "byte {place} is {byte}"
        );
    }
}

#[test]
fn every_changed_byte_under_a_right_checksum_is_read_without_a_panic() {
    let [_, job, _] = demo_jobs();
    let right = body(&job);
    for place in 0..right.len() {
        for byte in 0..=u8::MAX {
            let mut wrong = right.clone();
            wrong[place] = byte;
            // Whatever is read is a job that has a link of its own.
            if let Ok(other) = decode(&wrap(&wrong)) {
                assert_eq!(decode(&encode(&other).unwrap()), Ok(other));
            }
        }
    }
}

#[test]
fn a_list_that_claims_to_be_huge_is_refused() {
    let job = Job::default();
    let mut bytes = body(&job);
    bytes.splice(8..9, [0xff, 0xff, 0xff, 0xff, 0x0f]);
    assert_eq!(decode(&wrap(&bytes)), Err(LinkError::BeyondLimits));
}

#[test]
fn numbers_stay_as_they_were_typed() {
    for typed in [
        "25.40 mm",
        "1 3/8 in",
        "-0.050 mm",
        "31.2 - 0.4 mm",
        "1 in + 3 mm",
        "0/8 in",
    ] {
        let mut job = Job::default();
        job.wanted.length = Entered::read(typed, crate::quantity::Unit::Millimetre).unwrap();
        let back = decode(&encode(&job).unwrap()).unwrap();
        assert_eq!(back.wanted.length.entry().to_string(), typed);
    }
}
