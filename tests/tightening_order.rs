//! The order of a group names every bolt once, crosswise or outward.

use proptest::prelude::*;
use shankline::joint::{OrderRule, TighteningOrder, tightening_order};
use shankline::prelude::*;
use shankline::strength::group::{BoltPattern, GroupBolt};

/// A star closes a flange evenly: the second bolt lies opposite, the third and fourth square to them.
#[test]
fn flanges_of_multiples_of_four_begin_with_a_cross() {
    for count in [4, 8, 12, 16, 20, 24] {
        let flange = BoltPattern::circle(count, millimetres(300.0)).unwrap();
        let order = tightening_order(&flange);
        assert_eq!(order.rule, OrderRule::Star);
        let quarter = count / 4;
        let cross = [1, 1 + 2 * quarter, 1 + quarter, 1 + 3 * quarter];
        assert_eq!(order.bolts[..4], cross, "{count}");
    }
}

#[test]
fn two_bolts_and_rows_go_outward() {
    for (rows, columns) in [(1, 2), (4, 2), (5, 3)] {
        let rows_and_columns =
            BoltPattern::rows_and_columns(rows, columns, millimetres(70.0), millimetres(60.0));
        let order = tightening_order(&rows_and_columns.unwrap());
        assert_eq!(order.rule, OrderRule::Outward);
        assert_eq!(order.cautions().iter().count(), 0);
    }
}

proptest! {
    #[test]
    fn every_bolt_comes_once(places in prop::collection::vec((-1e3..1e3f64, -1e3..1e3f64), 1..40)) {
        let bolts = places
            .iter()
            .map(|&(x, y)| GroupBolt::new(millimetres(x), millimetres(y)));
        let pattern = BoltPattern::new(bolts).unwrap();
        let centre = pattern.centroid();
        for order in [TighteningOrder::star(&pattern), TighteningOrder::outward(&pattern, centre)] {
            let mut numbers = order.bolts;
            numbers.sort_unstable();
            prop_assert_eq!(numbers, (1..=places.len()).collect::<Vec<_>>());
        }
    }
}

/// A tenth of a per cent out of round is a drawing, more is another pattern. The passes of a star were recalled.
#[test]
fn a_circle_is_round() {
    let order = |height: f64| {
        let places = [(50.0, 0.0), (0.0, height), (-50.0, 0.0), (0.0, -height)];
        let bolts = places.map(|(x, y)| GroupBolt::new(millimetres(x), millimetres(y)));
        tightening_order(&BoltPattern::new(bolts).unwrap())
    };
    for height in [50.0, 50.04, 49.96] {
        let star = order(height);
        assert_eq!(star.rule, OrderRule::Star, "{height}");
        assert_eq!(star.cautions().iter().count(), 1);
    }
    for height in [50.06, 49.94, 52.0, 70.0] {
        assert_eq!(order(height).rule, OrderRule::Outward, "{height}");
    }
}
