use super::*;

fn canonical(text: &str) -> String {
    match text.parse::<Thread>() {
        Ok(thread) => thread.to_string(),
        Err(error) => panic!("{text}: {error}"),
    }
}

/// Diameter and threads per inch say the series: of each pair ASME B1.1 has one thread alone, UNC, UNF and UNEF
/// counting as of the constant-pitch series too where the pitch is the same. So 3-8 is of 8-UN and no misprint of the
/// UNC 3-4 (Machinery's Handbook 31, table 5c), and 1-12 is UNF, as 1-12 UN is.
#[test]
fn a_pitch_without_series_is_the_one_thread_that_has_it() {
    for (text, expected) in [
        ("3-4", "3-4 UNC"),
        ("3-8", "3-8 UN"),
        ("3-12", "3-12 UN"),
        ("3-16", "3-16 UN"),
        ("1-8", "1-8 UNC"),
        ("1-8 UN", "1-8 UNC"),
        ("1-12", "1-12 UNF"),
        ("1-12 UN", "1-12 UNF"),
        ("1-16", "1-16 UN"),
        ("1-20", "1-20 UNEF"),
    ] {
        assert_eq!(canonical(text), expected, "{text}");
    }
    // Of a named series it must be.
    for text in ["3-8 UNC", "1-12 UN8", "1-12 8-UN", "3-5", "1-14"] {
        assert!(text.parse::<Thread>().is_err(), "{text}");
    }
    // No size and pitch has two rows.
    for (at, row) in UnifiedThread::all().iter().enumerate() {
        let others = UnifiedThread::all().iter().skip(at + 1);
        #[allow(clippy::float_cmp)] // whole or half numbers
        let mut alike = others.filter(|other| {
            other.nominal_diameter == row.nominal_diameter
                && other.threads_per_inch == row.threads_per_inch
        });
        assert!(alike.next().is_none(), "{row:?}");
    }
}

#[test]
fn reads_every_way_of_writing() {
    for (text, expected) in [
        ("3/8-16 UNC", "3/8-16 UNC"),
        ("3/8-16", "3/8-16 UNC"),
        ("3/8-16UNC", "3/8-16 UNC"),
        ("3/8 - 16 unc", "3/8-16 UNC"),
        ("#10 - 32 UNF", "#10-32 UNF"),
        ("1 - 8 UNC", "1-8 UNC"),
        (" 5/8-18 UNF-2A ", "5/8-18 UNF-2A"),
        ("5/8-18 UNF - 2A", "5/8-18 UNF-2A"),
        ("1-1/2-6 UNC", "1-1/2-6 UNC"),
        ("1 1/2-6 UNC", "1-1/2-6 UNC"),
        ("1-8 UNC", "1-8 UNC"),
        ("1-64 UNC", "#1-64 UNC"),
        ("10-32 UNF", "#10-32 UNF"),
        ("#10-32 UNF", "#10-32 UNF"),
        (".190-32 UNF", "#10-32 UNF"),
        ("0.375-16 UNC", "3/8-16 UNC"),
        ("12-24 UNC", "#12-24 UNC"),
        ("4-4 UNC", "4-4 UNC"),
        ("4-40 UNC", "#4-40 UNC"),
        ("2-4.5 UNC", "2-4.5 UNC"),
        ("1-1/8-8 UN", "1-1/8-8 UN"),
        ("1-1/8-8 8-UN", "1-1/8-8 UN"),
        ("1-1/8-8 8UN", "1-1/8-8 UN"),
        ("3/8-16 UN", "3/8-16 UNC"),
        ("1-14 UNS", "1-14 UNS"),
        ("10-36 UNS", "#10-36 UNS"),
        ("12-36 UNS-2A", "#12-36 UNS-2A"),
        ("#10-36 UNS", "#10-36 UNS"),
        ("0.19-36 UNS", "#10-36 UNS"),
        ("10.0-36 UNS", "10.0-36 UNS"),
        ("10-12 UNS", "10-12 UNS"),
        ("5/16 UNF", "5/16-24 UNF"),
        ("5/16-unf", "5/16-24 UNF"),
        ("5/16UNF-2A", "5/16-24 UNF-2A"),
        ("1/2 UNRC - 2A LH", "1/2-13 UNRC-2A-LH"),
        ("#4 UNC", "#4-40 UNC"),
        ("10 UNF", "#10-32 UNF"),
        ("1-1/8 UNC", "1-1/8-7 UNC"),
        ("M12", "M12"),
        ("M 12", "M12"),
        ("M12-1.75", "M12"),
        ("M12 - 1.25 - 6g", "M12x1.25-6g"),
        ("M12-1.25 LH", "M12x1.25-LH"),
        ("M12x1.75", "M12"),
        ("M12x1.25", "M12x1.25"),
        ("M10 x 1.5 - 6g", "M10-6g"),
        ("M10 × 1.25 - 4g6g", "M10x1.25-4g6g"),
        ("m6", "M6"),
        ("M72x6", "M72x6"),
        ("M3.5-6H", "M3.5-6H"),
        ("1/4-20 UNC-2A-LH", "1/4-20 UNC-2A-LH"),
        ("1/4-20 UNC-2A LH", "1/4-20 UNC-2A-LH"),
        ("1/4-20 UNC - 2A - lh", "1/4-20 UNC-2A-LH"),
        ("1/4-20 LH", "1/4-20 UNC-LH"),
        ("1/4-20-LH", "1/4-20 UNC-LH"),
        ("1/4-20 UNC LH", "1/4-20 UNC-LH"),
        ("1/2-20 UNRF-2A", "1/2-20 UNRF-2A"),
        ("1/2-20 unjf-3A", "1/2-20 UNJF-3A"),
        ("1-11/16-18 UNJEF", "1-11/16-18 UNJEF"),
        ("1-1/8-8 8-UNR-2A", "1-1/8-8 UNR-2A"),
        ("1-14 UNRS", "1-14 UNRS"),
        ("1/2-13 UNC-2A SE 0.75", "1/2-13 UNC-2A SE 0.75"),
        ("1/2-13 UNC-2A SE .75-LH", "1/2-13 UNC-2A-LH SE 0.75"),
        (
            "0.750-0.0625P-0.1875L (3 STARTS) UNS-2A",
            "0.75-0.0625P-0.1875L (3 STARTS) UNS-2A",
        ),
        (
            "3/4 - .0625P - .125L (two starts) UNF-2A-LH",
            "3/4-0.0625P-0.125L (2 STARTS) UNF-2A-LH",
        ),
        (
            "1/2-0.07692P-0.15385L UNC",
            "1/2-0.0769P-0.1538L (2 STARTS) UNC",
        ),
        ("1/2-0.0769P-0.0769L (1 START) UNC", "1/2-13 UNC"),
        ("M20x2-7g6g-L-LH", "M20x2-7g6g-L-LH"),
        ("M20 x 2 - 7g6g - S", "M20x2-7g6g-S"),
        ("M20x2-7g6g-n", "M20x2-7g6g"),
        ("M20x2-7g6g-40-LH", "M20x2-7g6g-40-LH"),
        ("M8x1-6g-LH", "M8x1-6g-LH"),
        ("M8-LH", "M8-LH"),
        ("M8 LH", "M8-LH"),
        ("MJ6x1-4h6h", "MJ6x1-4h6h"),
        ("MJ6-4H5H", "MJ6x1-4H5H"),
        ("M16xPh3P1.5-6H", "M16xPh3P1.5-6H"),
        ("M16 x Ph3 P1.5 (two starts) - 6H", "M16xPh3P1.5-6H"),
        ("m16xph4p2", "M16xPh4P2"),
        ("M10x0.9 special", "M10x0.9 special"),
        ("m 10 X .9 SPECIAL - 6g LH", "M10x0.9 special-6g-LH"),
        ("M10-0.9 Special", "M10x0.9 special"),
        ("MJ10x0.9special-4h6h", "MJ10x0.9 special-4h6h"),
        ("M30xPh2.7P0.9 special", "M30xPh2.7P0.9 special"),
    ] {
        assert_eq!(canonical(text), expected, "{text}");
    }
}

#[test]
fn points_at_what_is_wrong() {
    let wrong = |text: &str| match text.parse::<Thread>() {
        Err(Error::Designation {
            position, problem, ..
        }) => (position, problem),
        other => panic!("{text}: {other:?}"),
    };
    assert_eq!(wrong(""), (0, DesignationProblem::Empty));
    assert_eq!(wrong("  "), (2, DesignationProblem::Empty));
    assert_eq!(wrong("x"), (0, DesignationProblem::Size));
    assert_eq!(wrong("M"), (1, DesignationProblem::Size));
    assert_eq!(wrong("M12x"), (4, DesignationProblem::Pitch));
    assert_eq!(wrong("M12-9z"), (4, DesignationProblem::Class));
    let near = |available: &str| DesignationProblem::NoPitch {
        available: available.into(),
    };
    let threads = "it may be 3/8-16 UNC or 3/8-24 UNF";
    assert_eq!(wrong("3/8"), (3, near(threads)));
    let threads = "it may be #4-40 UNC or #4-48 UNF";
    assert_eq!(wrong("#4"), (2, near(threads)));
    let threads = "it may be #1-64 UNC or 1-8 UNC";
    assert_eq!(wrong("1 UNC"), (2, near(threads)));
    assert!(matches!(
        wrong("2-1/8"),
        (5, DesignationProblem::NoPitch { available }) if available.contains("2-1/8-8 UN")
    ));
    assert_eq!(wrong("3/8 UN"), (4, DesignationProblem::Pitch));
    assert_eq!(wrong("3/8 16"), (4, DesignationProblem::Pitch));
    assert_eq!(wrong("M12-"), (4, DesignationProblem::Class));
    assert_eq!(wrong("3/8-"), (4, DesignationProblem::Pitch));
    assert_eq!(wrong("3/0-16"), (2, DesignationProblem::Size));
    assert_eq!(wrong("3/8-16 UNX"), (7, DesignationProblem::Series));
    assert_eq!(wrong("3/8-16 UNC-2C"), (11, DesignationProblem::Class));
    assert_eq!(
        wrong("3/8-16 UNC-2A RH"),
        (14, DesignationProblem::Trailing)
    );
    assert_eq!(
        wrong("3/8-16 UNC-2A-LH-LH"),
        (17, DesignationProblem::Trailing)
    );
    assert_eq!(wrong("3/8-16 UNC-"), (11, DesignationProblem::Class));
    assert_eq!(wrong("3/8-16 UNC 2A"), (11, DesignationProblem::Trailing));
    assert_eq!(
        wrong("3/8-16 UNC-LH-2A"),
        (14, DesignationProblem::Trailing)
    );
    assert_eq!(
        wrong("3/8-16 UNRC-2B"),
        (12, DesignationProblem::NutOfRoundedRoot)
    );
    assert_eq!(wrong("3/8-16 UNQC-2B"), (7, DesignationProblem::Series));
    assert_eq!(
        wrong("3/8-16 UNC-2A SE x"),
        (17, DesignationProblem::Engagement)
    );
    assert_eq!(wrong("M20-7g6g-Q"), (9, DesignationProblem::Engagement));
    assert_eq!(wrong("M20-7g6g-4x"), (9, DesignationProblem::Engagement));
    assert_eq!(wrong("M20-L"), (4, DesignationProblem::Class));
    assert_eq!(wrong("M16xPh3.2P1.5"), (6, DesignationProblem::Starts));
    assert_eq!(wrong("M16xPh3"), (7, DesignationProblem::Pitch));
    assert_eq!(wrong("M16xP3P1.5"), (5, DesignationProblem::Pitch));
    assert_eq!(
        wrong("M16xPh3P1.5 (three starts)"),
        (13, DesignationProblem::Starts)
    );
    assert_eq!(
        wrong(".75-.0625P-.2L (3 STARTS) UNS"),
        (11, DesignationProblem::Starts)
    );
    assert_eq!(
        wrong(".75-.05P-.0505L UNS"),
        (9, DesignationProblem::Starts)
    );
    assert_eq!(
        wrong(".75-.0625P-.1875L (4 STARTS) UNS"),
        (19, DesignationProblem::Starts)
    );
    assert_eq!(
        wrong(".75-.0625P-.1875 UNS"),
        (16, DesignationProblem::Pitch)
    );
    assert_eq!(wrong("#13-32"), (0, DesignationProblem::Size));
    // 00 is a size of its own (0.047 in), not 0 (0.060 in).
    assert_eq!(wrong("#00-90 UNS"), (0, DesignationProblem::Size));
    assert_eq!(wrong("00-80 UNF"), (0, DesignationProblem::Size));
    assert_eq!(wrong("#010-32"), (0, DesignationProblem::Size));
    assert_eq!(wrong("M10×1.5-zz"), (8, DesignationProblem::Class)); // characters, not bytes
    assert_eq!(
        wrong("1-4000000000/1-8 UNC"),
        (13, DesignationProblem::Size)
    );
    assert!(matches!(
        wrong("M70"),
        (0, DesignationProblem::NotStandard { .. })
    ));
    assert!(matches!(
        wrong("3/8-17 UNC"),
        (0, DesignationProblem::NotStandard { .. })
    ));
    assert_eq!(wrong("0.01-80 UNS"), (0, DesignationProblem::Size));
}

#[test]
fn metric_threads_in_no_list_say_so() {
    let wrong = |text: &str| match text.parse::<Thread>() {
        Err(Error::Designation {
            position, problem, ..
        }) => (position, problem),
        other => panic!("{text}: {other:?}"),
    };
    for nonsense in [
        "M1x0.9 special",
        "M9000x6 special",
        "M30x0.01 special",
        "M90x26 special",
    ] {
        assert_eq!(wrong(nonsense), (0, DesignationProblem::Size), "{nonsense}");
    }
    assert!(matches!(
        wrong("M10x0.9"),
        (0, DesignationProblem::NotStandard { .. })
    ));
    for trailing in ["M10 special", "M10x0.9 specials", "M10x0.9 special special"] {
        assert!(trailing.parse::<Thread>().is_err(), "{trailing}");
    }
}
