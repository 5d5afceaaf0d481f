//! Tests of the link that need its inside.

use super::bytes::Write;
use super::*;
use crate::costing::Step;
use crate::demo::demo_jobs;
use crate::job::{
    Aim, Event, Instrument, JawFace, LearnedPace, Moment, Rigidity, Setup, Turned, What, WorkStep,
};
use crate::quantity::{Entered, Temperature, Unit};
use crate::tables::{CuttingGroup, FileBite, TaperSize};

/// A text with a right checksum around any body.
fn wrap(body: &[u8]) -> String {
    super::wrap(VERSION, body.to_vec())
}

pub(super) fn body(job: &Job) -> Vec<u8> {
    v4::write(job).unwrap()
}

#[test]
fn an_example_takes_few_characters() {
    for job in demo_jobs() {
        let text = encode(&job).unwrap();
        // One of them stands on a lathe with its speeds and feeds in lists.
        assert!(text.len() < 320, "{}: {}", job.title, text.len());
        assert_eq!(decode(&text), Ok(job));
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
        (format!("+{good}"), LinkError::NotALink),
        (format!("a+{good}"), LinkError::Damaged),
        (
            good.replacen(VERSION, "e", 1),
            LinkError::Newer { version: 'e' },
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
    let [_, mut job, _] = demo_jobs();
    // And every block of this version.
    for (bit, one) in one_of_each_block().into_iter().enumerate() {
        take_block(&mut job, bit, one);
    }
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

/// One job for each block of version 3, with nothing but that block, in the order of their bits.
fn one_of_each_block() -> Vec<Job> {
    let change = |change: fn(&mut Job)| {
        let mut job = Job::default();
        change(&mut job);
        job
    };
    vec![
        change(|job| job.wanted.roughness = Some(Entered::plain(16, 1, Unit::Micrometre))),
        change(|job| job.shop.aim = Aim::LeastCost),
        change(|job| job.shop.edge.rake = Some(Entered::plain(6, 0, Unit::Degree))),
        change(|job| job.shop.machine.rigidity = Rigidity::Heavy),
        change(|job| job.shop.rates.per_hour = Some(Entered::plain(60, 0, Unit::Currency))),
        change(|job| {
            job.setup = Setup {
                jaws: Some(JawFace::Smooth),
                ..Setup::default()
            };
        }),
        change(|job| {
            for step in [Step::Hold, Step::Pack] {
                let time = job.shop.times.of_mut(step).unwrap();
                time.high = Some(Entered::plain(90, 0, Unit::Second));
            }
        }),
        change(|job| job.part.cutting_group = CuttingGroup::from_code("p-8")),
        change(|job| job.part.file_bite = Some(FileBite::Bites)),
        change(|job| job.shop.instruments = vec![Instrument::default()]),
        change(|job| {
            job.shop.machine.learned.paces = vec![LearnedPace {
                step: WorkStep::Rough,
                factor: Entered::plain(120, 0, Unit::Percent),
                jobs: Entered::plain(3, 0, Unit::Piece),
            }];
        }),
        change(|job| job.setup.room_temperature = Some(Entered::plain(26, 0, Unit::Celsius))),
        change(|job| {
            job.record.events = vec![Event {
                at: Moment::unix_seconds(1_764_000_000),
                struck: false,
                what: What::Note("Ran true".to_owned()),
            }];
        }),
    ]
}

/// Takes over what one block holds of another job.
fn take_block(job: &mut Job, bit: usize, from: Job) {
    match bit {
        0 => job.wanted.roughness = from.wanted.roughness,
        1 => job.shop.aim = from.shop.aim,
        2 => job.shop.edge = from.shop.edge,
        3 => job.shop.machine = from.shop.machine,
        4 => job.shop.rates = from.shop.rates,
        5 => job.setup = from.setup,
        6 => job.shop.times = from.shop.times,
        7 => job.part.cutting_group = from.part.cutting_group,
        8 => job.part.file_bite = from.part.file_bite,
        9 => job.shop.instruments = from.shop.instruments,
        10 => job.shop.machine.learned = from.shop.machine.learned,
        11 => job.setup.room_temperature = from.setup.room_temperature,
        _ => job.record = from.record,
    }
}

/// What version 2 has of a job; the whole number that says which blocks there are stands behind it.
fn base_length(job: &Job) -> usize {
    let mut to = bytes::Writer::default();
    v2::write_base(job, &mut to).unwrap();
    to.into_bytes().len()
}

#[test]
fn each_block_is_there_where_it_says_something_and_only_there() {
    let plain = Job::default();
    let base = base_length(&plain);
    assert_eq!(body(&plain).len(), base + 1);
    assert_eq!(body(&plain)[base], 0);
    let mut all = Job::default();
    for (bit, job) in (0_u32..).zip(one_of_each_block()) {
        let bytes = body(&job);
        let mut blocks = bytes::Reader::new(&bytes[base..]);
        assert_eq!(blocks.whole(), 1 << bit, "block {bit}");
        assert_eq!(decode(&wrap(&bytes)), Ok(job.clone()), "block {bit}");
        // Without its bit the bytes of the block are left over; with it and nothing behind it they end too soon.
        let other =
            |flags: &[u8], rest: &[u8]| decode(&wrap(&[&bytes[..base], flags, rest].concat()));
        let flags = if bit < 7 { 1 } else { 2 };
        let rest = &bytes[base + flags..];
        assert!(!rest.is_empty(), "block {bit}");
        assert_eq!(
            other(&[0], rest),
            Err(LinkError::BeyondLimits),
            "block {bit}"
        );
        let own = &bytes[base..base + flags];
        assert_eq!(other(own, &[]), Err(LinkError::BeyondLimits), "block {bit}");
        // A block in which nothing is entered has no place: there would be two texts of one job.
        let mut empty = bytes::Writer::default();
        match bit {
            0 => Option::<Entered<crate::quantity::Length>>::None.write(&mut empty),
            1 => Aim::LeastTime.write(&mut empty),
            2 => crate::job::Edge::default().write(&mut empty),
            3 => crate::job::Machine::default().write(&mut empty),
            4 => crate::job::Rates::default().write(&mut empty),
            5 => Setup::default().write(&mut empty),
            11 => Option::<Entered<Temperature>>::None.write(&mut empty),
            // The choices, the times, and the lists: none.
            _ => {
                empty.byte(0);
                Some(())
            }
        }
        .unwrap();
        let empty = empty.into_bytes();
        assert_eq!(
            other(own, &empty),
            Err(LinkError::BeyondLimits),
            "block {bit}"
        );
        take_block(&mut all, usize::try_from(bit).unwrap(), job);
    }
    let bytes = body(&all);
    assert_eq!(bytes::Reader::new(&bytes[base..]).whole(), (1 << 13) - 1);
    assert_eq!(decode(&wrap(&bytes)), Ok(all));
}

#[test]
fn a_block_that_is_not_known_is_refused() {
    let job = Job::default();
    let mut bytes = body(&job);
    bytes.pop();
    for bit in 13..64_u32 {
        let mut to = bytes::Writer::default();
        to.whole(1 << bit);
        let wrong = [bytes.as_slice(), &to.into_bytes(), &[0]].concat();
        assert_eq!(
            decode(&wrap(&wrong)),
            Err(LinkError::BeyondLimits),
            "bit {bit}"
        );
        // And without anything behind it.
        let wrong = &wrong[..wrong.len() - 1];
        assert_eq!(
            decode(&wrap(wrong)),
            Err(LinkError::BeyondLimits),
            "bit {bit}"
        );
    }
}

#[test]
fn times_of_steps_stand_in_order_and_each_says_something() {
    let job = Job::default();
    let base = base_length(&job);
    let start = body(&job)[..base].to_vec();
    // 90 s at worst, and nothing else: two empty fields, then a tag without decimals and its number.
    let time = |step: u8| vec![step, 14, 14, 0, 90];
    let with = |count: u8, times: &[Vec<u8>]| {
        let times = times.concat();
        decode(&wrap(
            &[start.as_slice(), &[1 << 6, count], &times].concat(),
        ))
    };
    let times = one_of_each_block().swap_remove(6);
    assert_eq!(with(2, &[time(1), time(15)]), Ok(times));
    for (what, count, times) in [
        ("out of order", 2, vec![time(15), time(1)]),
        ("twice the same", 2, vec![time(1), time(1)]),
        ("no such step", 1, vec![time(16)]),
        (
            "the last number there is, and one more",
            2,
            vec![time(255), time(255)],
        ),
        ("says nothing", 2, vec![time(1), vec![2, 14, 14, 14]]),
        ("fewer than said", 3, vec![time(1), time(15)]),
        ("more than said", 1, vec![time(1), time(15)]),
        ("none at all", 0, vec![]),
    ] {
        assert_eq!(with(count, &times), Err(LinkError::BeyondLimits), "{what}");
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
        job.wanted.length = Entered::read(typed, Unit::Millimetre).unwrap();
        let back = decode(&encode(&job).unwrap()).unwrap();
        assert_eq!(back.wanted.length.entry().to_string(), typed);
    }
}
