//! Joints chosen to be drawn: thin and thick, small and large, every kind of head, nut, seat and end. All invented.

use shankline::joint::*;
use shankline::parts::Locking;
use shankline::prelude::*;
use shankline::units::degrees;

fn mm(of: f64) -> Length {
    millimetres(of)
}

fn pm(of: f64, by: f64) -> Spread<Length> {
    mm(of).plus_minus(mm(by))
}

/// A ply with everything said of it, for a thread of so many millimetres.
fn plate(name: &str, thickness: Spread<Length>, d: f64) -> JointPly {
    JointPly::new(name, thickness)
        .material("S355 steel")
        .hole(mm(1.1 * d))
        .end_distance(mm(3.0 * d))
        .edge_distance(mm(3.0 * d))
        .width(mm(6.0 * d))
}

fn two(title: &str, thread: &str, d: f64, a: f64, b: f64) -> JointBuilder {
    Joint::builder(thread)
        .title(title)
        .add(plate("lug", pm(a, 0.02 * a), d))
        .add(plate("frame", pm(b, 0.02 * b), d))
        .across(newtons(40.0 * d * d))
}

fn torque() -> TorqueTightening {
    TorqueTightening::new(
        NutFactor::new(0.14, 0.18, 0.22).unwrap(),
        PreloadTarget::Reusable,
    )
}

fn own_bolt() -> OwnScrew {
    let only = OwnLength::new(pm(68.0, 0.5), mm(34.0), mm(40.0));
    OwnScrew::new("turned bolt, drawing 12 (invented)", [only])
}

/// Names of pictures and their joints.
// A list.
#[allow(clippy::too_many_lines)]
pub fn chosen() -> Vec<(&'static str, Joint)> {
    let ten = (0..10).map(|at| {
        let name = if at % 2 == 0 {
            "leaf <A> & \"B\""
        } else {
            "spacer"
        };
        plate(name, pm(4.0, 0.2), 16.0)
    });
    let ten = ten.fold(
        Joint::builder("M16").title("Ten leaves of 4 mm"),
        JointBuilder::add,
    );
    let many = (0..44).fold(
        Joint::builder("M20").title("Forty-four shims"),
        |joint, at| joint.add(plate(&format!("shim {at}"), pm(2.5, 0.05), 20.0)),
    );
    let long_name = "a ply whose name nobody can read in one breath, as it was copied from the order of a timber merchant and goes on and on";
    let countersunk = {
        let head = CountersunkHead::new(degrees(90.0), mm(30.0), mm(8.0));
        let mut own = own_bolt();
        own.countersunk = Some(head);
        two("Countersunk foot of a davit", "M16", 16.0, 22.0, 18.0)
            .own_bolt(own)
            .no_washers()
            .stack(move |stack| {
                stack.head_seat(HeadSeat::Countersunk {
                    below_flush: pm(0.5, 0.2),
                    head_height: head.height,
                })
            })
    };
    let tapped = TappedPart::new("cast bed")
        .material("ductile iron 65-45-12")
        .thread(mm(25.0), TappedHole::Blind { depth: mm(38.0) });
    let through = TappedPart::new("rail").thread(mm(12.0), TappedHole::Through);
    let unsaid = {
        let mut part = TappedPart::new("block of which little is said");
        part.engagement = Some(mm(20.0));
        part
    };
    let play = Spread {
        min: mm(1.0),
        nominal: mm(2.0),
        max: mm(3.0),
    };
    let mut nut = OwnNut::new(
        "turned nut, drawing 13 (invented)",
        pm(16.0, 0.2),
        Locking::None,
    );
    nut.across_flats = Some(mm(24.0));
    let builders = vec![
        ("plain", two("Platform bracket", "M12", 12.0, 20.0, 20.0)),
        (
            "thin_thick",
            two("Sheet on a beam", "M20", 20.0, 2.0, 120.0),
        ),
        (
            "thick_thin",
            two("Beam on a sheet", "M20", 20.0, 120.0, 2.0),
        ),
        ("m3", two("Lid of a control box", "M3", 3.0, 1.5, 2.0)),
        (
            "four_inch",
            Joint::builder("4-4 UNC")
                .title("Anchor plate of a crane post")
                .ply("post plate", "4 +/- 0.06 in")
                .hole("4.25 in")
                .ply("anchor frame", "6 +/- 0.06 in")
                .hole("4.25 in")
                .across("20 kip")
                .own_strength(OwnStrength::new("forging (invented)", megapascals(600.0)))
                .own_bolt({
                    let length = Spread::exact(inches(16.0));
                    let only = OwnLength::new(length, inches(8.0), inches(10.0));
                    let mut own = OwnScrew::new("forged bolt, drawing 4 (invented)", [only]);
                    own.across_flats = Some(inches(5.8));
                    own
                })
                .own_nut({
                    let height = Spread::exact(inches(4.0));
                    OwnNut::new("forged nut, drawing 5 (invented)", height, Locking::None)
                })
                .no_washers(),
        ),
        (
            "inch_and_a_half",
            Joint::builder("1-1/2-6 UNC")
                .title("Anchor plate of a crane post")
                .ply("post plate", "2 +/- 0.06 in")
                .hole("1.625 in")
                .ply("anchor frame", "3 +/- 0.06 in")
                .hole("1.625 in")
                .across("20 kip"),
        ),
        ("ten_plies", ten.across("4 kN")),
        ("many_plies", many.across("4 kN")),
        (
            "clevis_inch",
            Joint::builder("3/4-10 UNC")
                .title("Drawbar clevis")
                .ply("ear", "0.500 +/- 0.015 in")
                .hole("0.8125 in")
                .ply("tongue", "1.000 +/- 0.020 in")
                .hole("0.8125 in")
                .ply("ear", "0.500 +/- 0.015 in")
                .hole("0.8125 in")
                .across("8000 lbf"),
        ),
        (
            "structural",
            Joint::builder("7/8-9 UNC")
                .title("Mezzanine beam splice")
                .product(ScrewProduct::StructuralBolt)
                .grade("ASTM F3125 A325 type 1")
                .nut(NutStyle::HeavyHex)
                .washers(WasherStyle::F436)
                .ply("cover plate", "0.5 +/- 0.02 in")
                .hole("0.9375 in")
                .ply("web", "0.4 +/- 0.02 in")
                .hole("0.9375 in")
                .ply("cover plate", "0.5 +/- 0.02 in")
                .hole("0.9375 in")
                .across("20 kip"),
        ),
        (
            "socket",
            two("Jaw of a log splitter", "M8", 8.0, 12.0, 15.0).product(ScrewProduct::Iso4762),
        ),
        (
            "full_thread",
            two("Rail clip", "M10", 10.0, 6.0, 8.0).product(ScrewProduct::Iso4017),
        ),
        (
            "fine",
            two("Hub of a mixer", "M20x1.5", 20.0, 40.0, 36.0).product(ScrewProduct::Iso8765),
        ),
        (
            "hv",
            two("Column base", "M24", 24.0, 25.0, 30.0)
                .product(ScrewProduct::En14399_4)
                .grade("ISO 898-1 class 10.9")
                .nut(NutStyle::En14399_4)
                .washers(WasherStyle::En14399_6),
        ),
        (
            "hr",
            two("Column base, taller nut", "M24", 24.0, 25.0, 30.0)
                .product(ScrewProduct::En14399_3)
                .grade("ISO 898-1 class 8.8")
                .nut(NutStyle::En14399_3)
                .washers(WasherStyle::En14399_6),
        ),
        ("countersunk", countersunk),
        (
            "own_bolt",
            two("Turned bolt in a hinge", "M16", 16.0, 20.0, 20.0)
                .own_bolt(own_bolt())
                .own_nut(nut)
                .no_washers(),
        ),
        (
            "tapped_blind",
            Joint::builder("M12")
                .title("Winch foot on a cast bed")
                .product(ScrewProduct::Iso4017)
                .add(plate("foot", pm(20.0, 0.3), 12.0))
                .tapped(tapped)
                .across("1 kN")
                .along("5 kN"),
        ),
        (
            "tapped_through",
            Joint::builder("M8")
                .title("Stop on a rail")
                .product(ScrewProduct::Iso4762)
                .add(plate("stop", pm(15.0, 0.2), 8.0))
                .tapped(through)
                .across("0.5 kN"),
        ),
        (
            "tapped_unsaid",
            Joint::builder("M16")
                .title("Eye on a block")
                .add(plate("eye", pm(50.0, 0.5), 16.0))
                .tapped(unsaid)
                .across("0.5 kN"),
        ),
        (
            "gaps",
            two("Seesaw pivot with play", "M16", 16.0, 12.0, 30.0)
                .add(plate("post lug", pm(12.0, 0.3), 16.0))
                .stack(move |_| {
                    let plies = [12.0, 30.0, 12.0].map(|t| plate("lug", pm(t, 0.3), 16.0));
                    let [a, b, c] = plies;
                    Stack::builder()
                        .add(a)
                        .gap(play)
                        .add(b)
                        .gap(play)
                        .add(c)
                        .shear_planes([1, 2])
                }),
        ),
        (
            "sleeve",
            two("Gate hinge on a bushing", "M12", 12.0, 10.0, 40.0).stack(|_| {
                Stack::builder()
                    .add(plate("leaf", pm(10.0, 0.2), 12.0))
                    .add(plate("boss", pm(40.0, 0.3), 20.0))
                    .add(plate("leaf", pm(10.0, 0.2), 12.0))
                    .sleeve("bushing", pm(41.0, 0.1), 2, 2)
                    .shear_planes([1, 2])
            }),
        ),
        (
            "recessed",
            two("Head below the deck", "M10", 10.0, 30.0, 20.0).stack(|stack| {
                stack.head_seat(HeadSeat::Recessed {
                    depth: pm(9.0, 0.3),
                })
            }),
        ),
        (
            "spot_face",
            two("Rough casting", "M16", 16.0, 20.0, 40.0)
                .stack(|stack| stack.spot_face_under_nut(pm(2.0, 0.5))),
        ),
        (
            "soft",
            Joint::builder("M12")
                .title("Ledger of a deck")
                .ply("ledger", "40 +/- 2 mm")
                .ply("rim joist", "60 +/- 2 mm")
                .washers(WasherStyle::Iso7093)
                .across("2 kN"),
        ),
        (
            "insert",
            two("Swing hanger", "M12", 12.0, 20.0, 20.0).nut(NutStyle::Iso7040),
        ),
        (
            "all_metal",
            two("Oven door", "M12", 12.0, 20.0, 20.0).nut(NutStyle::Iso7042),
        ),
        (
            "slotted",
            Joint::builder("3/4-10 UNC")
                .title("Seesaw pivot")
                .nut(NutStyle::HexSlotted)
                .ply("lug", "0.5 in")
                .hole("0.8125 in")
                .ply("boss", "1.25 in")
                .hole("0.8125 in")
                .across("900 lbf"),
        ),
        (
            "flange",
            two("Mower deck", "M10", 10.0, 8.0, 20.0)
                .nut(NutStyle::Iso4161)
                .no_washers(),
        ),
        (
            "serrated",
            Joint::builder("1/2-13 UNC")
                .title("Seat frame")
                .nut(NutStyle::SerratedFlange)
                .no_washers()
                .ply("rail", "0.25 in")
                .ply("foot", "0.75 in")
                .across("500 lbf"),
        ),
        (
            "too_short",
            two("Wrong drawer", "M12", 12.0, 20.0, 20.0).length(mm(50.0)),
        ),
        (
            "way_too_short",
            two("Wrong drawer again", "M12", 12.0, 40.0, 40.0).length(mm(70.0)),
        ),
        (
            "too_long",
            two("Nothing is cut here", "M12", 12.0, 20.0, 20.0)
                .length(mm(120.0))
                .rules({
                    let mut rules = LengthRules::fabrication(UnitSystem::Si);
                    rules.cut = CutRule::Never;
                    rules
                }),
        ),
        (
            "fit_up",
            two("Timber that swells", "M12", 12.0, 20.0, 20.0).stack(|_| {
                Stack::builder()
                    .ply("timber", pm(60.0, 8.0))
                    .ply("timber", pm(60.0, 8.0))
                    .shear_planes([1])
            }),
        ),
        (
            "long_thin",
            two("Through bolt of a log wall", "M8", 8.0, 150.0, 120.0),
        ),
        (
            "slot",
            two("Adjustable stop", "M10", 10.0, 10.0, 12.0).add(
                JointPly::new("slotted arm", pm(8.0, 0.2))
                    .material("S355 steel")
                    .slot(
                        mm(11.0),
                        mm(30.0),
                        shankline::strength::ply::SlotDirection::Along,
                    ),
            ),
        ),
        (
            "hostile",
            Joint::builder("M12")
                .title("]]>\u{202e}</svg><script>alert(1)</script> & \u{0}\u{fffe} \"'")
                .ply("<b>&amp;</b>", "20 mm")
                .ply(long_name, "20 mm")
                .ply(
                    "漢字と長い名前の板です、とても長い名前の板です、もっと長い",
                    "20 mm",
                )
                .ply(
                    "WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW",
                    "5 mm",
                )
                .across("4 kN"),
        ),
        ("pulled", {
            let share = |joint: JointBuilder| {
                joint
                    .across("0 kN")
                    .along("12 kN")
                    .prying(Prying::None)
                    .tightening(Tightening::Torque(torque()))
            };
            share(
                Joint::builder("M16")
                    .title("Lifting eye plate")
                    .add(plate("eye plate", pm(20.0, 0.3), 16.0))
                    .add(plate("frame", pm(25.0, 0.3), 16.0)),
            )
        }),
        (
            "overloaded",
            Joint::builder("M12")
                .title("Drawbar under a stuck plough")
                .add(plate("drawbar", pm(20.0, 0.3), 12.0))
                .add(plate("frame", pm(20.0, 0.3), 12.0))
                .across("90 kN"),
        ),
    ];
    builders
        .into_iter()
        .map(|(name, builder)| match builder.build() {
            Ok(joint) => (name, joint),
            Err(error) => panic!("{name}: {error}"),
        })
        .collect()
}
