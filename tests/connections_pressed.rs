//! Struts whose plates are pressed: two covers of 8 mm on a tongue of 16 mm, two rows of two M16 60 mm apart, 140 mm wide.

use proptest::prelude::*;
use shankline::connection::{Connection, ConnectionVerdict, LoadCase, Outline, Side};
use shankline::joint::{Need, RuleSet, Word};
use shankline::prelude::*;
use shankline::strength::check::Mode;

fn square(side: &str) -> Outline {
    Outline::rectangle(side, side).unwrap()
}

fn force(name: &str, kilonewtons: [f64; 3]) -> LoadCase {
    LoadCase::new(
        name,
        kilonewtons.map(|own| newtons(1e3 * own)),
        [0.0; 3].map(millimetres),
    )
}

#[derive(Clone, Copy)]
struct Strut<'a> {
    methods: JointMethods,
    material: &'a str,
    /// Of the tongue.
    buckles_over: Option<&'a str>,
    loaded: Option<&'a str>,
    covers: [&'a str; 2],
    push: f64,
}

fn en_1993<'a>() -> Strut<'a> {
    Strut {
        methods: JointMethods::en_1993(),
        material: "S275 steel",
        buckles_over: Some("400 mm"),
        loaded: Some("tongue"),
        covers: ["8 mm", "8 mm"],
        push: 100.0,
    }
}

impl Strut<'_> {
    fn connection(self) -> Connection {
        let bolt = Joint::builder("M16")
            .ply("cover", self.covers[0])
            .material(self.material)
            .ply("tongue", "16 mm")
            .material(self.material)
            .ply("cover", self.covers[1])
            .material(self.material)
            .washers(WasherStyle::Iso7090)
            .methods(self.methods)
            .load_factor(1.0)
            .rules(RuleSet::En1090.rules(UnitSystem::Si));
        let mut strut = Connection::builder(bolt)
            .rows_and_columns(2, 2, "60 mm", "60 mm")
            .plate("cover", square("140 mm"))
            .held(Side::Bottom)
            .buckling_length("40 mm")
            .plate("tongue", Outline::rectangle("140 mm", "150 mm").unwrap())
            .held(Side::Top);
        if let Some(length) = self.buckles_over {
            strut = strut.buckling_length(length);
        }
        if let Some(ply) = self.loaded {
            strut = strut.loaded(ply);
        }
        strut
            .cases([force("push", [0.0, -self.push, 0.0])])
            .build()
            .unwrap()
    }

    fn check(self) -> ConnectionVerdict {
        self.connection().check().unwrap()
    }
}

fn tongue_bears(verdict: &ConnectionVerdict, citation: &str) -> Vec<f64> {
    let checks = verdict.checks.iter().map(|own| &own.check);
    let own = checks.filter(|own| {
        own.mode == Mode::GrossSection
            && own.place.to_string() == "ply 2"
            && own.method.citation.contains(citation)
    });
    own.map(|own| own.utilisation.value).collect()
}

/// Lcr 400 mm: i = 16 / sqrt 12 = 4.6188 mm, 86.60; lambda1 = pi sqrt(210000 / 275) = 86.815, ratio 0.99755; phi = 0.5 (1 +
/// 0.49 x 0.79755 + 0.99511) = 1.19296; chi = 1 / (1.19296 + sqrt(1.42315 - 0.99511)) = 0.54136; 140 x 16 x 275 x chi =
/// 333.48 kN.
#[test]
fn by_en_1993() {
    let found = tongue_bears(&en_1993().check(), "6.3.1");
    assert_eq!(found.len(), 1);
    assert!((found[0] - 100.0 / 333.48).abs() < 1e-5, "{found:?}");
    // Only where the load presses.
    let pulled = Strut {
        push: -100.0,
        ..en_1993()
    };
    assert_eq!(tongue_bears(&pulled.check(), "6.3.1"), [0.0; 0]);
    // The bolts hold more than the plate.
    for (push, word) in [(150.0, Word::Holds), (180.0, Word::DoesNotHold)] {
        let slender = Strut {
            buckles_over: Some("650 mm"),
            push,
            ..en_1993()
        };
        let verdict = slender.check();
        assert_eq!(verdict.word(), word, "{}", verdict.render(UnitSystem::Si));
    }
}

/// Allowable by AISC 360: 86.60 to 0.658^(275 / Fe) with Fe = pi^2 x 199948 / 86.60^2 = 263.13 N/mm2: 177.57 x 2240 / 1.67 =
/// 238.2 kN.
#[test]
fn by_aisc_360() {
    let strut = Strut {
        methods: JointMethods::aisc_asd(AiscEdition::E2016),
        ..en_1993()
    };
    let found = tongue_bears(&strut.check(), "J4.4");
    assert_eq!(found.len(), 1);
    assert!((found[0] - 100.0 / 238.2).abs() < 1e-4, "{found:?}");
}

#[test]
fn what_is_not_said_leaves_it_undecided() {
    assert_eq!(en_1993().check().word(), Word::Holds);
    let open = |strut: Strut| -> Vec<Need> {
        let verdict = strut.check();
        assert_eq!(verdict.word(), Word::Undecided);
        let open = verdict.open().into_iter();
        open.map(|own| {
            assert_eq!(own.mode, Mode::GrossSection);
            own.need.clone()
        })
        .collect()
    };
    let silent = Strut {
        buckles_over: None,
        ..en_1993()
    };
    assert_eq!(open(silent), [Need::BucklingLength]);
    // The other way the covers are pressed, and their length is said.
    let pulled = Strut {
        push: -100.0,
        ..silent
    };
    assert_eq!(pulled.check().word(), Word::Holds);
    let whose = Strut {
        loaded: None,
        ..en_1993()
    };
    assert!(open(whose).iter().all(|need| *need == Need::LoadedPly));
    // Covers of 8 and 12 mm push the tongue aside.
    let askew = Strut {
        covers: ["8 mm", "12 mm"],
        ..en_1993()
    };
    assert!(matches!(open(askew)[0], Need::Method(_)));
    // So does a gap on one side.
    let mut apart = en_1993().connection();
    let plies = apart.joint.stack.plies().to_vec();
    let mut stack = shankline::joint::Stack::builder();
    for (n, ply) in plies.into_iter().enumerate() {
        if n == 1 {
            stack = stack.gap(Spread::exact(millimetres(3.0)));
        }
        stack = stack.add(ply);
    }
    apart.joint.stack = stack.shear_planes([1, 2]).build().unwrap();
    let verdict = apart.check().unwrap();
    assert!(
        verdict
            .open()
            .iter()
            .any(|own| own.mode == Mode::GrossSection)
    );
    // Nor has a publisher without columns here an answer.
    let mut other = en_1993();
    other.methods.plies = shankline::strength::ply::PlyMethod::Is800;
    let verdict = other.check();
    assert_ne!(verdict.word(), Word::Holds);
}

/// From the upper row to the top of the tongue it is 45 mm: no ends make 22 mm of them.
#[test]
fn what_contradicts_the_outline_is_refused() {
    let refused = |connection: Connection| connection.check().unwrap_err().to_string();
    let short = Strut {
        buckles_over: Some("22 mm"),
        ..en_1993()
    };
    assert!(refused(short.connection()).contains("buckling length of \"tongue\""));
    for loaded in ["post", "Tongue", ""] {
        let wrong = Strut {
            loaded: Some(loaded),
            ..en_1993()
        };
        assert!(refused(wrong.connection()).contains("ply that is loaded"));
    }
    let mut adrift = en_1993().connection();
    adrift.plates[1].held = None;
    assert!(refused(adrift).contains("held nowhere"));
    for length in [0.0, -1.0, f64::NAN, f64::INFINITY] {
        let mut wrong = en_1993().connection();
        wrong.plates[1].buckling_length = Some(millimetres(length));
        assert!(wrong.check().is_err());
    }
}

/// Loads that alternate press every plate once.
#[test]
fn alternating_loads_press_both() {
    use shankline::connection::Alternation;
    let mut swing = Strut {
        buckles_over: None,
        ..en_1993()
    }
    .connection();
    swing.cases = vec![
        force("pull", [0.0, 100.0, 0.0]),
        force("push", [0.0, -100.0, 0.0]),
    ];
    swing.alternations = vec![Alternation::new("pull", "push").cycles(1e3)];
    let open = swing.check().unwrap();
    assert!(
        open.open()
            .iter()
            .any(|own| own.need == Need::BucklingLength)
    );
    // An end that is in no combination is looked at all the same.
    swing.combinations = vec![
        shankline::connection::Combination::new("most")
            .plus(1.0, "pull")
            .plus(0.5, "push"),
    ];
    let open = swing.check().unwrap();
    assert!(
        open.open()
            .iter()
            .any(|own| own.need == Need::BucklingLength)
    );
}

fn used(verdict: &ConnectionVerdict) -> f64 {
    verdict.utilisation().unwrap_or(0.0)
}

fn methods() -> impl Strategy<Value = JointMethods> {
    prop::sample::select(vec![
        JointMethods::en_1993(),
        JointMethods::aisc_asd(AiscEdition::E2016),
        JointMethods::aisc_lrfd(AiscEdition::E2010),
        JointMethods::machine_design(2.0),
    ])
}

/// Words from good to bad.
const fn rank(word: Word) -> u8 {
    match word {
        Word::Holds => 0,
        Word::Undecided => 1,
        Word::DoesNotHold => 2,
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    /// A push is never less to a strut than a pull as large, a longer way to buckle never better, and a load that is whose
    /// nobody knows never holds.
    #[test]
    fn pressed_is_never_better(methods in methods(), push in 1.0..400.0_f64, length in 23.0..900.0_f64, times in 1.0..4.0_f64) {
        let millimetres = |length: f64| format!("{length} mm");
        let (short, long) = (millimetres(length), millimetres(times * length));
        let strut = |over, push, loaded| Strut { methods, buckles_over: Some(over), push, loaded, ..en_1993() }.check();
        let tongue = Some("tongue");
        let (pushed, pulled) = (strut(&short, push, tongue), strut(&short, -push, tongue));
        prop_assert!(used(&pushed) >= used(&pulled) - 1e-12);
        prop_assert!(rank(pushed.word()) >= rank(pulled.word()));
        let longer = strut(&long, push, tongue);
        prop_assert!(used(&longer) >= used(&pushed) - 1e-12);
        prop_assert!(rank(longer.word()) >= rank(pushed.word()));
        // Seen from the covers the same load goes the other way.
        prop_assert!((used(&strut(&short, push, Some("cover"))) - used(&pulled)).abs() < 1e-12);
        prop_assert!(strut(&short, push, None).word() != Word::Holds);
    }

    /// Steel beside a plate takes nothing away: a wider one never has less of a net or gross section.
    #[test]
    fn wider_is_never_worse(methods in methods(), width in 100.0..900.0_f64, more in 0.0..900.0_f64, push in -200.0..200.0_f64) {
        prop_assume!(push.abs() > 1.0);
        let of = |width: f64| -> Vec<f64> {
            let mut strut = Strut { methods, push, ..en_1993() }.connection();
            strut.plates[1].outline = Outline::rectangle(millimetres(width), millimetres(150.0)).unwrap();
            let verdict = strut.check().unwrap();
            [Mode::NetSection, Mode::GrossSection].map(|mode| {
                let own = verdict.checks.iter().map(|own| &own.check);
                let own = own.filter(|own| own.mode == mode && own.place.to_string() == "ply 2");
                own.map(|own| own.utilisation.value).fold(0.0, f64::max)
            }).to_vec()
        };
        for (narrow, wide) in of(width).into_iter().zip(of(width + more)) {
            prop_assert!(narrow > 0.0 && wide > 0.0 && wide <= narrow * (1.0 + 1e-9), "{narrow} {wide}");
        }
    }
}
