//! Rockwell C, Vickers, Brinell and tensile strength from each other, against every row of three published tables.
//!
//! ASTM E140, table 1, with the strengths of SAE J417 (thousands of pounds per square inch times 6.894757); ISO 18265,
//! table A.1; and that table's values at whole HRC and at round HBW, worked out by straight lines outside this project
//! and rounded to what is shown. The marks say how far each row was checked against printed copies.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use skimwright::quantity::{Hardness, Stress};
use skimwright::tables::Confirmed::{self, Memory, OneSource, TwoSources};
use skimwright::tables::{
    HardnessBasis, HardnessScales, other_scales, rockwell_from_brinell, rockwell_from_vickers,
    tensile_strength,
};

/// HV, HBW, HRC, tensile strength in megapascals, the mark of the row and that of its strength.
type Row = (
    Option<f64>,
    Option<f64>,
    Option<f64>,
    Option<f64>,
    Confirmed,
    Option<Confirmed>,
);

/// Only takes up the arithmetic.
const SAME: f64 = 1e-9;

#[derive(Clone, Copy)]
struct Tolerances {
    vickers: f64,
    brinell: f64,
    rockwell: f64,
    strength: f64,
}

const EXACT: Tolerances = Tolerances {
    vickers: SAME,
    brinell: SAME,
    rockwell: SAME,
    strength: SAME,
};

#[track_caller]
fn close(what: &str, row: &Row, got: Option<f64>, wanted: Option<f64>, tolerance: f64) {
    match (got, wanted) {
        (Some(got), Some(wanted)) => assert!(
            (got - wanted).abs() <= tolerance,
            "{row:?}: {what} {got}, wanted {wanted}, off by {}",
            got - wanted
        ),
        (None, None) => {}
        _ => panic!("{row:?}: {what} {got:?}, wanted {wanted:?}"),
    }
}

#[track_caller]
fn check(got: Option<HardnessScales>, row: &Row, room: Tolerances) {
    let &(vickers, brinell, rockwell, strength, confirmed, confirmed_strength) = row;
    let hrc = |it: HardnessScales| it.rockwell.map(Hardness::to_hrc);
    let mpa = |it: HardnessScales| it.tensile_strength.map(Stress::to_mpa);
    close("HV", row, got.map(|it| it.vickers), vickers, room.vickers);
    close(
        "HBW",
        row,
        got.and_then(|it| it.brinell),
        brinell,
        room.brinell,
    );
    close("HRC", row, got.and_then(hrc), rockwell, room.rockwell);
    close("MPa", row, got.and_then(mpa), strength, room.strength);
    if let Some(got) = got {
        assert_eq!(got.confirmed, confirmed, "{row:?}");
        if let Some(wanted) = confirmed_strength {
            assert_eq!(got.confirmed_strength, wanted, "{row:?}");
        }
    }
}

/// A row of a table is found from each of its columns, to the last figure.
#[test]
fn printed_rows_lead_back_from_every_column() {
    for (basis, rows) in [(HardnessBasis::E140, E140), (HardnessBasis::Iso18265, ISO)] {
        for row in rows {
            let vickers = row.0.unwrap();
            check(basis.from_vickers(vickers), row, EXACT);
            let rockwell = row.2.map(Hardness::hrc);
            assert_eq!(rockwell_from_vickers(vickers, basis), rockwell, "{row:?}");
            if let Some(brinell) = row.1 {
                check(basis.from_brinell(brinell), row, EXACT);
                assert_eq!(rockwell_from_brinell(brinell, basis), rockwell, "{row:?}");
            }
            if let Some(rockwell) = rockwell {
                check(basis.from_rockwell(rockwell), row, EXACT);
            }
        }
    }
    assert_eq!((E140.len(), ISO.len()), (49, 97));
}

/// Between its rows ISO 18265 gives what was worked out outside, within the rounding of what is written here.
#[test]
fn whole_degrees_and_round_numbers_of_brinell_lie_between_the_rows() {
    let iso = HardnessBasis::Iso18265;
    let rounded = Tolerances {
        vickers: 0.501,
        brinell: 0.501,
        rockwell: SAME,
        strength: 0.501,
    };
    for (hrc, row) in (20_u8..).zip(ISO_WHOLE_HRC) {
        let got = iso.from_rockwell(Hardness::hrc(f64::from(hrc)));
        if row.0.is_none() {
            assert_eq!(got, None, "the table begins at 20.3 HRC");
            continue;
        }
        check(got, row, rounded);
        // The whole degrees that the strength of a job is reckoned with are those of this table.
        if let (Some(strength), Some(used)) =
            (row.3, tensile_strength(Hardness::hrc(f64::from(hrc))))
        {
            assert_eq!(used.typical, Stress::mpa(strength), "{hrc} HRC");
        }
    }
    let rounded = Tolerances {
        vickers: 0.0501,
        brinell: SAME,
        rockwell: 0.0501,
        strength: 0.501,
    };
    for row in ISO_ROUND_HBW {
        check(iso.from_brinell(row.1.unwrap()), row, rounded);
    }
    assert_eq!((ISO_WHOLE_HRC.len(), ISO_ROUND_HBW.len()), (49, 35));
}

#[test]
fn there_and_back_gives_the_same() {
    for (basis, from, to) in [
        (HardnessBasis::E140, 238.0, 940.0),
        (HardnessBasis::Iso18265, 80.0, 940.0),
    ] {
        let mut vickers = from;
        let mut last: Option<HardnessScales> = None;
        while vickers <= to {
            let scales = basis.from_vickers(vickers).unwrap();
            if let Some(rockwell) = scales.rockwell {
                let back = basis.from_rockwell(rockwell).unwrap();
                assert!((back.vickers - vickers).abs() < 1e-6, "{vickers} HV");
            }
            if let Some(brinell) = scales.brinell {
                let back = basis.from_brinell(brinell).unwrap();
                assert!((back.vickers - vickers).abs() < 1e-6, "{vickers} HV");
            }
            if let Some(last) = last {
                let grows = |before: Option<f64>, now: Option<f64>| match (before, now) {
                    (Some(before), Some(now)) => before < now,
                    _ => true,
                };
                let hrc = |it: HardnessScales| it.rockwell.map(Hardness::to_hrc);
                let mpa = |it: HardnessScales| it.tensile_strength.map(Stress::to_mpa);
                assert!(grows(last.brinell, scales.brinell), "{vickers} HV");
                assert!(grows(hrc(last), hrc(scales)), "{vickers} HV");
                assert!(grows(mpa(last), mpa(scales)), "{vickers} HV");
            }
            last = Some(scales);
            vickers += 0.7;
        }
    }
}

/// What the two tables are apart at equal HRC, as their compilers found it.
#[test]
fn the_two_tables_differ_as_described() {
    let mut most = (0.0_f64, 0.0_f64, f64::INFINITY, f64::NEG_INFINITY);
    for hrc in 21..=68_u8 {
        let hardness = Hardness::hrc(f64::from(hrc));
        let iso = HardnessBasis::Iso18265.from_rockwell(hardness).unwrap();
        let e140 = HardnessBasis::E140.from_rockwell(hardness).unwrap();
        most.0 = most.0.max((iso.vickers - e140.vickers).abs());
        if let (Some(iso), Some(e140)) = (iso.brinell, e140.brinell) {
            most.1 = most.1.max((iso - e140).abs());
        }
        if let (Some(iso), Some(j417)) = (iso.tensile_strength, e140.tensile_strength) {
            most.2 = most.2.min((j417 - iso).to_mpa());
            most.3 = most.3.max((j417 - iso).to_mpa());
        }
        // The older function is the same table.
        let older = other_scales(hardness).unwrap();
        assert_eq!((older.vickers, older.brinell), (e140.vickers, e140.brinell));
    }
    assert!(1.0 < most.0 && most.0 < 2.5, "{} HV", most.0);
    assert!(7.5 < most.1 && most.1 < 8.5, "{} HBW", most.1);
    assert!(-37.0 < most.2 && most.2 < -30.0, "{} MPa", most.2);
    assert!(95.0 < most.3 && most.3 < 125.0, "{} MPa", most.3);
}

#[test]
fn nothing_is_said_past_the_ends() {
    let (e140, iso) = (HardnessBasis::E140, HardnessBasis::Iso18265);
    for basis in HardnessBasis::ALL {
        assert_eq!(basis.from_rockwell(Hardness::hrc(19.9)), None);
        assert_eq!(basis.from_rockwell(Hardness::hrc(68.1)), None);
        assert_eq!(basis.from_vickers(941.0), None);
        assert_eq!(basis.from_brinell(740.0), None);
        for odd in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, 0.0, -1.0] {
            assert_eq!(basis.from_vickers(odd), None);
            assert_eq!(basis.from_brinell(odd), None);
        }
    }
    assert_eq!(
        (e140.from_vickers(237.9), iso.from_vickers(79.9)),
        (None, None)
    );
    assert_eq!(iso.from_brinell(618.1), None);
    // Too soft for Rockwell C, but not for a strength.
    assert_eq!(rockwell_from_vickers(235.0, iso), None);
    assert_eq!(rockwell_from_brinell(200.0, iso), None);
    assert!(iso.from_brinell(200.0).unwrap().tensile_strength.is_some());
    // Harder than the tables of strength reach.
    assert!(iso.from_vickers(651.0).unwrap().tensile_strength.is_none());
    assert!(
        e140.from_rockwell(Hardness::hrc(59.5))
            .unwrap()
            .tensile_strength
            .is_none()
    );
}

/// ASTM E140, table 1; strengths of SAE J417.
#[rustfmt::skip]
const E140: &[Row] = &[
    (Some(238.0), Some(226.0), Some(20.0), Some(758.0),  TwoSources, Some(Memory)),
    (Some(243.0), Some(231.0), Some(21.0), Some(772.0),  TwoSources, Some(Memory)),
    (Some(248.0), Some(237.0), Some(22.0), Some(793.0),  TwoSources, Some(Memory)),
    (Some(254.0), Some(243.0), Some(23.0), Some(807.0),  TwoSources, Some(Memory)),
    (Some(260.0), Some(247.0), Some(24.0), Some(820.0),  TwoSources, Some(Memory)),
    (Some(266.0), Some(253.0), Some(25.0), Some(848.0),  TwoSources, Some(Memory)),
    (Some(272.0), Some(258.0), Some(26.0), Some(862.0),  TwoSources, Some(Memory)),
    (Some(279.0), Some(264.0), Some(27.0), Some(883.0),  TwoSources, Some(Memory)),
    (Some(286.0), Some(271.0), Some(28.0), Some(903.0),  TwoSources, Some(Memory)),
    (Some(294.0), Some(279.0), Some(29.0), Some(931.0),  TwoSources, Some(Memory)),
    (Some(302.0), Some(286.0), Some(30.0), Some(951.0),  TwoSources, Some(Memory)),
    (Some(310.0), Some(294.0), Some(31.0), Some(972.0),  TwoSources, Some(Memory)),
    (Some(318.0), Some(301.0), Some(32.0), Some(1007.0), TwoSources, Some(Memory)),
    (Some(327.0), Some(311.0), Some(33.0), Some(1027.0), TwoSources, Some(Memory)),
    (Some(336.0), Some(319.0), Some(34.0), Some(1048.0), TwoSources, Some(TwoSources)),
    (Some(345.0), Some(327.0), Some(35.0), Some(1076.0), TwoSources, Some(TwoSources)),
    (Some(354.0), Some(336.0), Some(36.0), Some(1110.0), TwoSources, Some(TwoSources)),
    (Some(363.0), Some(344.0), Some(37.0), Some(1145.0), TwoSources, Some(TwoSources)),
    (Some(372.0), Some(353.0), Some(38.0), Some(1179.0), TwoSources, Some(TwoSources)),
    (Some(382.0), Some(362.0), Some(39.0), Some(1220.0), TwoSources, Some(TwoSources)),
    (Some(392.0), Some(371.0), Some(40.0), Some(1255.0), TwoSources, Some(TwoSources)),
    (Some(402.0), Some(381.0), Some(41.0), Some(1296.0), TwoSources, Some(TwoSources)),
    (Some(412.0), Some(390.0), Some(42.0), Some(1338.0), TwoSources, Some(TwoSources)),
    (Some(423.0), Some(400.0), Some(43.0), Some(1386.0), TwoSources, Some(TwoSources)),
    (Some(434.0), Some(409.0), Some(44.0), Some(1434.0), TwoSources, Some(TwoSources)),
    (Some(446.0), Some(421.0), Some(45.0), Some(1482.0), TwoSources, Some(TwoSources)),
    (Some(458.0), Some(432.0), Some(46.0), Some(1524.0), TwoSources, Some(TwoSources)),
    (Some(471.0), Some(443.0), Some(47.0), Some(1579.0), TwoSources, Some(TwoSources)),
    (Some(484.0), Some(455.0), Some(48.0), Some(1641.0), TwoSources, Some(TwoSources)),
    (Some(498.0), Some(469.0), Some(49.0), Some(1696.0), TwoSources, Some(TwoSources)),
    (Some(513.0), Some(481.0), Some(50.0), Some(1758.0), TwoSources, Some(TwoSources)),
    (Some(528.0), Some(496.0), Some(51.0), Some(1820.0), TwoSources, Some(TwoSources)),
    (Some(544.0), Some(512.0), Some(52.0), Some(1882.0), TwoSources, Some(TwoSources)),
    (Some(560.0), Some(525.0), Some(53.0), Some(1951.0), TwoSources, Some(TwoSources)),
    (Some(577.0), Some(543.0), Some(54.0), Some(2013.0), TwoSources, Some(TwoSources)),
    (Some(595.0), Some(560.0), Some(55.0), Some(2075.0), TwoSources, Some(TwoSources)),
    (Some(613.0), Some(577.0), Some(56.0), Some(2158.0), TwoSources, Some(TwoSources)),
    (Some(633.0), Some(595.0), Some(57.0), Some(2241.0), TwoSources, Some(TwoSources)),
    (Some(653.0), Some(615.0), Some(58.0), Some(2330.0), TwoSources, Some(TwoSources)),
    (Some(674.0), Some(634.0), Some(59.0), Some(2420.0), TwoSources, Some(TwoSources)),
    (Some(697.0), Some(654.0), Some(60.0), None,         TwoSources, None),
    (Some(720.0), Some(670.0), Some(61.0), None,         TwoSources, None),
    (Some(746.0), Some(688.0), Some(62.0), None,         TwoSources, None),
    (Some(772.0), Some(705.0), Some(63.0), None,         TwoSources, None),
    (Some(800.0), Some(722.0), Some(64.0), None,         TwoSources, None),
    (Some(832.0), Some(739.0), Some(65.0), None,         TwoSources, None),
    (Some(865.0), None,        Some(66.0), None,         TwoSources, None),
    (Some(900.0), None,        Some(67.0), None,         TwoSources, None),
    (Some(940.0), None,        Some(68.0), None,         TwoSources, None),
];

/// ISO 18265, table A.1.
#[rustfmt::skip]
const ISO: &[Row] = &[
    (Some(80.0),  Some(76.0),  None,       Some(255.0),  TwoSources, Some(TwoSources)),
    (Some(85.0),  Some(80.7),  None,       Some(270.0),  TwoSources, Some(TwoSources)),
    (Some(90.0),  Some(85.5),  None,       Some(285.0),  TwoSources, Some(TwoSources)),
    (Some(95.0),  Some(90.2),  None,       Some(305.0),  TwoSources, Some(TwoSources)),
    (Some(100.0), Some(95.0),  None,       Some(320.0),  TwoSources, Some(TwoSources)),
    (Some(105.0), Some(99.8),  None,       Some(335.0),  TwoSources, Some(TwoSources)),
    (Some(110.0), Some(105.0), None,       Some(350.0),  TwoSources, Some(TwoSources)),
    (Some(115.0), Some(109.0), None,       Some(370.0),  TwoSources, Some(TwoSources)),
    (Some(120.0), Some(114.0), None,       Some(385.0),  TwoSources, Some(TwoSources)),
    (Some(125.0), Some(119.0), None,       Some(400.0),  TwoSources, Some(TwoSources)),
    (Some(130.0), Some(124.0), None,       Some(415.0),  TwoSources, Some(TwoSources)),
    (Some(135.0), Some(128.0), None,       Some(430.0),  TwoSources, Some(TwoSources)),
    (Some(140.0), Some(133.0), None,       Some(450.0),  TwoSources, Some(TwoSources)),
    (Some(145.0), Some(138.0), None,       Some(465.0),  TwoSources, Some(TwoSources)),
    (Some(150.0), Some(143.0), None,       Some(480.0),  TwoSources, Some(TwoSources)),
    (Some(155.0), Some(147.0), None,       Some(495.0),  TwoSources, Some(TwoSources)),
    (Some(160.0), Some(152.0), None,       Some(510.0),  TwoSources, Some(TwoSources)),
    (Some(165.0), Some(156.0), None,       Some(530.0),  TwoSources, Some(TwoSources)),
    (Some(170.0), Some(162.0), None,       Some(545.0),  TwoSources, Some(TwoSources)),
    (Some(175.0), Some(166.0), None,       Some(560.0),  TwoSources, Some(TwoSources)),
    (Some(180.0), Some(171.0), None,       Some(575.0),  TwoSources, Some(TwoSources)),
    (Some(185.0), Some(176.0), None,       Some(595.0),  TwoSources, Some(TwoSources)),
    (Some(190.0), Some(181.0), None,       Some(610.0),  TwoSources, Some(TwoSources)),
    (Some(195.0), Some(185.0), None,       Some(625.0),  TwoSources, Some(TwoSources)),
    (Some(200.0), Some(190.0), None,       Some(640.0),  TwoSources, Some(TwoSources)),
    (Some(205.0), Some(195.0), None,       Some(660.0),  TwoSources, Some(TwoSources)),
    (Some(210.0), Some(199.0), None,       Some(675.0),  TwoSources, Some(TwoSources)),
    (Some(215.0), Some(204.0), None,       Some(690.0),  TwoSources, Some(TwoSources)),
    (Some(220.0), Some(209.0), None,       Some(705.0),  TwoSources, Some(TwoSources)),
    (Some(225.0), Some(214.0), None,       Some(720.0),  TwoSources, Some(TwoSources)),
    (Some(230.0), Some(219.0), None,       Some(740.0),  TwoSources, Some(TwoSources)),
    (Some(235.0), Some(223.0), None,       Some(755.0),  TwoSources, Some(TwoSources)),
    (Some(240.0), Some(228.0), Some(20.3), Some(770.0),  TwoSources, Some(TwoSources)),
    (Some(245.0), Some(233.0), Some(21.3), Some(785.0),  TwoSources, Some(TwoSources)),
    (Some(250.0), Some(238.0), Some(22.2), Some(800.0),  TwoSources, Some(TwoSources)),
    (Some(255.0), Some(242.0), Some(23.1), Some(820.0),  TwoSources, Some(TwoSources)),
    (Some(260.0), Some(247.0), Some(24.0), Some(835.0),  TwoSources, Some(TwoSources)),
    (Some(265.0), Some(252.0), Some(24.8), Some(850.0),  TwoSources, Some(TwoSources)),
    (Some(270.0), Some(257.0), Some(25.6), Some(865.0),  TwoSources, Some(TwoSources)),
    (Some(275.0), Some(261.0), Some(26.4), Some(880.0),  TwoSources, Some(TwoSources)),
    (Some(280.0), Some(266.0), Some(27.1), Some(900.0),  TwoSources, Some(TwoSources)),
    (Some(285.0), Some(271.0), Some(27.8), Some(915.0),  TwoSources, Some(TwoSources)),
    (Some(290.0), Some(276.0), Some(28.5), Some(930.0),  TwoSources, Some(TwoSources)),
    (Some(295.0), Some(280.0), Some(29.2), Some(950.0),  TwoSources, Some(TwoSources)),
    (Some(300.0), Some(285.0), Some(29.8), Some(965.0),  TwoSources, Some(TwoSources)),
    (Some(310.0), Some(295.0), Some(31.0), Some(995.0),  TwoSources, Some(TwoSources)),
    (Some(320.0), Some(304.0), Some(32.2), Some(1030.0), TwoSources, Some(TwoSources)),
    (Some(330.0), Some(314.0), Some(33.3), Some(1060.0), TwoSources, Some(TwoSources)),
    (Some(340.0), Some(323.0), Some(34.4), Some(1095.0), TwoSources, Some(TwoSources)),
    (Some(350.0), Some(333.0), Some(35.5), Some(1125.0), TwoSources, Some(TwoSources)),
    (Some(360.0), Some(342.0), Some(36.6), Some(1155.0), TwoSources, Some(TwoSources)),
    (Some(370.0), Some(352.0), Some(37.7), Some(1190.0), TwoSources, Some(TwoSources)),
    (Some(380.0), Some(361.0), Some(38.8), Some(1220.0), TwoSources, Some(TwoSources)),
    (Some(390.0), Some(371.0), Some(39.8), Some(1255.0), TwoSources, Some(TwoSources)),
    (Some(400.0), Some(380.0), Some(40.8), Some(1290.0), TwoSources, Some(TwoSources)),
    (Some(410.0), Some(390.0), Some(41.8), Some(1320.0), TwoSources, Some(TwoSources)),
    (Some(420.0), Some(399.0), Some(42.7), Some(1350.0), TwoSources, Some(TwoSources)),
    (Some(430.0), Some(409.0), Some(43.6), Some(1385.0), TwoSources, Some(TwoSources)),
    (Some(440.0), Some(418.0), Some(44.5), Some(1420.0), TwoSources, Some(TwoSources)),
    (Some(450.0), Some(428.0), Some(45.3), Some(1455.0), TwoSources, Some(TwoSources)),
    (Some(460.0), Some(437.0), Some(46.1), Some(1485.0), TwoSources, Some(TwoSources)),
    (Some(470.0), Some(447.0), Some(46.9), Some(1520.0), TwoSources, Some(TwoSources)),
    (Some(480.0), Some(456.0), Some(47.7), Some(1555.0), TwoSources, Some(TwoSources)),
    (Some(490.0), Some(466.0), Some(48.4), Some(1595.0), TwoSources, Some(TwoSources)),
    (Some(500.0), Some(475.0), Some(49.1), Some(1630.0), TwoSources, Some(TwoSources)),
    (Some(510.0), Some(485.0), Some(49.8), Some(1665.0), TwoSources, Some(TwoSources)),
    (Some(520.0), Some(494.0), Some(50.5), Some(1700.0), TwoSources, Some(TwoSources)),
    (Some(530.0), Some(504.0), Some(51.1), Some(1740.0), TwoSources, Some(TwoSources)),
    (Some(540.0), Some(513.0), Some(51.7), Some(1775.0), TwoSources, Some(TwoSources)),
    (Some(550.0), Some(523.0), Some(52.3), Some(1810.0), TwoSources, Some(TwoSources)),
    (Some(560.0), Some(532.0), Some(53.0), Some(1845.0), TwoSources, Some(TwoSources)),
    (Some(570.0), Some(542.0), Some(53.6), Some(1880.0), TwoSources, Some(TwoSources)),
    (Some(580.0), Some(551.0), Some(54.1), Some(1920.0), TwoSources, Some(TwoSources)),
    (Some(590.0), Some(561.0), Some(54.7), Some(1955.0), TwoSources, Some(TwoSources)),
    (Some(600.0), Some(570.0), Some(55.2), Some(1995.0), TwoSources, Some(TwoSources)),
    (Some(610.0), Some(580.0), Some(55.7), Some(2030.0), TwoSources, Some(TwoSources)),
    (Some(620.0), Some(589.0), Some(56.3), Some(2070.0), TwoSources, Some(TwoSources)),
    (Some(630.0), Some(599.0), Some(56.8), Some(2105.0), TwoSources, Some(TwoSources)),
    (Some(640.0), Some(608.0), Some(57.3), Some(2145.0), TwoSources, Some(TwoSources)),
    (Some(650.0), Some(618.0), Some(57.8), Some(2180.0), TwoSources, Some(TwoSources)),
    (Some(660.0), None,        Some(58.3), None,         TwoSources, None),
    (Some(670.0), None,        Some(58.8), None,         TwoSources, None),
    (Some(680.0), None,        Some(59.2), None,         TwoSources, None),
    (Some(690.0), None,        Some(59.7), None,         TwoSources, None),
    (Some(700.0), None,        Some(60.1), None,         TwoSources, None),
    (Some(720.0), None,        Some(61.0), None,         OneSource,  None),
    (Some(740.0), None,        Some(61.8), None,         OneSource,  None),
    (Some(760.0), None,        Some(62.5), None,         OneSource,  None),
    (Some(780.0), None,        Some(63.3), None,         OneSource,  None),
    (Some(800.0), None,        Some(64.0), None,         OneSource,  None),
    (Some(820.0), None,        Some(64.7), None,         OneSource,  None),
    (Some(840.0), None,        Some(65.3), None,         OneSource,  None),
    (Some(860.0), None,        Some(65.9), None,         OneSource,  None),
    (Some(880.0), None,        Some(66.4), None,         OneSource,  None),
    (Some(900.0), None,        Some(67.0), None,         OneSource,  None),
    (Some(920.0), None,        Some(67.5), None,         OneSource,  None),
    (Some(940.0), None,        Some(68.0), None,         OneSource,  None),
];

/// ISO 18265, table A.1, at whole HRC from 20.
#[rustfmt::skip]
const ISO_WHOLE_HRC: &[Row] = &[
    (None,        None,        Some(20.0), None,         TwoSources, None),
    (Some(244.0), Some(232.0), Some(21.0), Some(780.0),  TwoSources, Some(TwoSources)),
    (Some(249.0), Some(237.0), Some(22.0), Some(797.0),  TwoSources, Some(TwoSources)),
    (Some(254.0), Some(242.0), Some(23.0), Some(818.0),  TwoSources, Some(TwoSources)),
    (Some(260.0), Some(247.0), Some(24.0), Some(835.0),  TwoSources, Some(TwoSources)),
    (Some(266.0), Some(253.0), Some(25.0), Some(854.0),  TwoSources, Some(TwoSources)),
    (Some(272.0), Some(259.0), Some(26.0), Some(872.0),  TwoSources, Some(TwoSources)),
    (Some(279.0), Some(265.0), Some(27.0), Some(897.0),  TwoSources, Some(TwoSources)),
    (Some(286.0), Some(272.0), Some(28.0), Some(919.0),  TwoSources, Some(TwoSources)),
    (Some(294.0), Some(279.0), Some(29.0), Some(944.0),  TwoSources, Some(TwoSources)),
    (Some(302.0), Some(287.0), Some(30.0), Some(970.0),  TwoSources, Some(TwoSources)),
    (Some(310.0), Some(295.0), Some(31.0), Some(995.0),  TwoSources, Some(TwoSources)),
    (Some(318.0), Some(302.0), Some(32.0), Some(1024.0), TwoSources, Some(TwoSources)),
    (Some(327.0), Some(311.0), Some(33.0), Some(1052.0), TwoSources, Some(TwoSources)),
    (Some(336.0), Some(320.0), Some(34.0), Some(1082.0), TwoSources, Some(TwoSources)),
    (Some(345.0), Some(328.0), Some(35.0), Some(1111.0), TwoSources, Some(TwoSources)),
    (Some(355.0), Some(337.0), Some(36.0), Some(1139.0), TwoSources, Some(TwoSources)),
    (Some(364.0), Some(346.0), Some(37.0), Some(1168.0), TwoSources, Some(TwoSources)),
    (Some(373.0), Some(354.0), Some(38.0), Some(1198.0), TwoSources, Some(TwoSources)),
    (Some(382.0), Some(363.0), Some(39.0), Some(1227.0), TwoSources, Some(TwoSources)),
    (Some(392.0), Some(373.0), Some(40.0), Some(1262.0), TwoSources, Some(TwoSources)),
    (Some(402.0), Some(382.0), Some(41.0), Some(1296.0), TwoSources, Some(TwoSources)),
    (Some(412.0), Some(392.0), Some(42.0), Some(1327.0), TwoSources, Some(TwoSources)),
    (Some(423.0), Some(402.0), Some(43.0), Some(1362.0), TwoSources, Some(TwoSources)),
    (Some(434.0), Some(413.0), Some(44.0), Some(1401.0), TwoSources, Some(TwoSources)),
    (Some(446.0), Some(424.0), Some(45.0), Some(1442.0), TwoSources, Some(TwoSources)),
    (Some(459.0), Some(436.0), Some(46.0), Some(1481.0), TwoSources, Some(TwoSources)),
    (Some(471.0), Some(448.0), Some(47.0), Some(1524.0), TwoSources, Some(TwoSources)),
    (Some(484.0), Some(460.0), Some(48.0), Some(1572.0), TwoSources, Some(TwoSources)),
    (Some(499.0), Some(474.0), Some(49.0), Some(1625.0), TwoSources, Some(TwoSources)),
    (Some(513.0), Some(488.0), Some(50.0), Some(1675.0), TwoSources, Some(TwoSources)),
    (Some(528.0), Some(502.0), Some(51.0), Some(1733.0), TwoSources, Some(TwoSources)),
    (Some(545.0), Some(518.0), Some(52.0), Some(1792.0), TwoSources, Some(TwoSources)),
    (Some(560.0), Some(532.0), Some(53.0), Some(1845.0), TwoSources, Some(TwoSources)),
    (Some(578.0), Some(549.0), Some(54.0), Some(1912.0), TwoSources, Some(TwoSources)),
    (Some(596.0), Some(566.0), Some(55.0), Some(1979.0), TwoSources, Some(TwoSources)),
    (Some(615.0), Some(584.0), Some(56.0), Some(2050.0), TwoSources, Some(TwoSources)),
    (Some(634.0), Some(603.0), Some(57.0), Some(2121.0), TwoSources, Some(TwoSources)),
    (Some(654.0), None,        Some(58.0), None,         TwoSources, None),
    (Some(675.0), None,        Some(59.0), None,         TwoSources, None),
    (Some(698.0), None,        Some(60.0), None,         TwoSources, None),
    (Some(720.0), None,        Some(61.0), None,         OneSource,  None),
    (Some(746.0), None,        Some(62.0), None,         OneSource,  None),
    (Some(772.0), None,        Some(63.0), None,         OneSource,  None),
    (Some(800.0), None,        Some(64.0), None,         OneSource,  None),
    (Some(830.0), None,        Some(65.0), None,         OneSource,  None),
    (Some(864.0), None,        Some(66.0), None,         OneSource,  None),
    (Some(900.0), None,        Some(67.0), None,         OneSource,  None),
    (Some(940.0), None,        Some(68.0), None,         OneSource,  None),
];

/// ISO 18265, table A.1, at round HBW.
#[rustfmt::skip]
const ISO_ROUND_HBW: &[Row] = &[
    (Some(84.3),  Some(80.0),  None,       Some(268.0),  TwoSources, Some(TwoSources)),
    (Some(89.5),  Some(85.0),  None,       Some(283.0),  TwoSources, Some(TwoSources)),
    (Some(94.8),  Some(90.0),  None,       Some(304.0),  TwoSources, Some(TwoSources)),
    (Some(100.0), Some(95.0),  None,       Some(320.0),  TwoSources, Some(TwoSources)),
    (Some(105.2), Some(100.0), None,       Some(336.0),  TwoSources, Some(TwoSources)),
    (Some(110.0), Some(105.0), None,       Some(350.0),  TwoSources, Some(TwoSources)),
    (Some(116.0), Some(110.0), None,       Some(373.0),  TwoSources, Some(TwoSources)),
    (Some(121.0), Some(115.0), None,       Some(388.0),  TwoSources, Some(TwoSources)),
    (Some(126.0), Some(120.0), None,       Some(403.0),  TwoSources, Some(TwoSources)),
    (Some(131.2), Some(125.0), None,       Some(419.0),  TwoSources, Some(TwoSources)),
    (Some(137.0), Some(130.0), None,       Some(438.0),  TwoSources, Some(TwoSources)),
    (Some(142.0), Some(135.0), None,       Some(456.0),  TwoSources, Some(TwoSources)),
    (Some(147.0), Some(140.0), None,       Some(471.0),  TwoSources, Some(TwoSources)),
    (Some(152.5), Some(145.0), None,       Some(488.0),  TwoSources, Some(TwoSources)),
    (Some(158.0), Some(150.0), None,       Some(504.0),  TwoSources, Some(TwoSources)),
    (Some(163.8), Some(155.0), None,       Some(525.0),  TwoSources, Some(TwoSources)),
    (Some(168.3), Some(160.0), None,       Some(540.0),  TwoSources, Some(TwoSources)),
    (Some(173.8), Some(165.0), None,       Some(556.0),  TwoSources, Some(TwoSources)),
    (Some(179.0), Some(170.0), None,       Some(572.0),  TwoSources, Some(TwoSources)),
    (Some(184.0), Some(175.0), None,       Some(591.0),  TwoSources, Some(TwoSources)),
    (Some(189.0), Some(180.0), None,       Some(607.0),  TwoSources, Some(TwoSources)),
    (Some(195.0), Some(185.0), None,       Some(625.0),  TwoSources, Some(TwoSources)),
    (Some(200.0), Some(190.0), None,       Some(640.0),  TwoSources, Some(TwoSources)),
    (Some(205.0), Some(195.0), None,       Some(660.0),  TwoSources, Some(TwoSources)),
    (Some(211.0), Some(200.0), None,       Some(678.0),  TwoSources, Some(TwoSources)),
    (Some(216.0), Some(205.0), None,       Some(693.0),  TwoSources, Some(TwoSources)),
    (Some(221.0), Some(210.0), None,       Some(708.0),  TwoSources, Some(TwoSources)),
    (Some(226.0), Some(215.0), None,       Some(724.0),  TwoSources, Some(TwoSources)),
    (Some(231.2), Some(220.0), None,       Some(744.0),  TwoSources, Some(TwoSources)),
    (Some(237.0), Some(225.0), None,       Some(761.0),  TwoSources, Some(TwoSources)),
    (Some(242.0), Some(230.0), Some(20.7), Some(776.0),  TwoSources, Some(TwoSources)),
    (Some(247.0), Some(235.0), Some(21.7), Some(791.0),  TwoSources, Some(TwoSources)),
    (Some(252.5), Some(240.0), Some(22.6), Some(810.0),  TwoSources, Some(TwoSources)),
    (Some(258.0), Some(245.0), Some(23.6), Some(829.0),  TwoSources, Some(TwoSources)),
    (Some(263.0), Some(250.0), Some(24.5), Some(844.0),  TwoSources, Some(TwoSources)),
];
