use super::*;

/// Shear, tension and plies of an aircraft have one load: with 1.5 in one and 1.0 in another it is limit load here and
/// ultimate load there.
#[test]
fn all_of_a_joint_have_the_same_loads() {
    let aircraft = JointMethods::mil_hdbk_5(ksi(75.0));
    assert!(aircraft.checked().is_ok());
    let mut changed = [aircraft; 3];
    if let ShearMethod::MilHdbk5 {
        ultimate_factor, ..
    } = &mut changed[0].shear
    {
        *ultimate_factor = 1.0;
    }
    if let TensionMethod::MilHdbk5 {
        ultimate_factor, ..
    } = &mut changed[1].tension
    {
        *ultimate_factor = 1.0;
    }
    if let PlyMethod::MilHdbk5 {
        ultimate_factor, ..
    } = &mut changed[2].plies
    {
        *ultimate_factor = 1.0;
    }
    for methods in changed {
        assert_ne!(methods, aircraft);
        assert!(methods.checked().is_err(), "{methods:?}");
    }
}

/// The rules of a code for tension and shear together are made for its own shares: of another code they may be lower.
#[test]
fn shear_goes_with_the_interaction_of_its_code() {
    let mixed = |shear: JointMethods, other: JointMethods| JointMethods {
        interaction: other.interaction,
        ..shear
    };
    let aisc = JointMethods::aisc_lrfd(AiscEdition::E2016);
    let machine = JointMethods::machine_design(2.0);
    let aircraft = JointMethods::mil_hdbk_5(ksi(75.0));
    for (methods, goes) in [
        (aisc, true),
        (machine, true),
        (mixed(aisc, machine), false),
        (mixed(aircraft, machine), false),
        (mixed(machine, aircraft), false),
    ] {
        assert_eq!(methods.checked().is_ok(), goes, "{methods:?}");
    }
}
