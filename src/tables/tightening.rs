//! Tightening: how far the preload scatters by each method, how much the surfaces embed after it, how
//! far structural codes turn the nut.

use super::{generated, rows_of};
use crate::caution::{Caution, Cautions};
use crate::error::{Allowed, Error, out_of_range, positive};
use crate::source::{Basis, Provenance};
use crate::units::{Angle, Length, Ratio};

/// How a bolt is tightened.
///
/// ```
/// use shankline::tables::tightening::{TighteningMethod, TighteningScatter};
/// assert_eq!(TighteningScatter::of_method(TighteningMethod::Ultrasonic).len(), 2);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum TighteningMethod {
    /// By feel.
    Feel,
    /// Torque wrench, threads not described.
    TorqueWrench,
    /// Torque wrench, unlubricated threads.
    TorqueWrenchUnlubricated,
    /// Torque wrench, cadmium plated threads.
    TorqueWrenchCadmium,
    /// Torque wrench, lubricated threads.
    TorqueWrenchLubricated,
    /// Torque wrench, the torque found by tests on the original joint.
    TorqueFromTests,
    /// Torque wrench, the torque computed from estimated friction.
    TorqueFromFriction,
    /// Precision power driver.
    PrecisionPowerDriver,
    /// Impact wrench.
    ImpactWrench,
    /// Turn of the nut.
    TurnOfNut,
    /// Computer-controlled wrench.
    ComputerWrench,
    /// Angle-controlled beyond yield.
    AngleControlled,
    /// Yield-point controlled.
    YieldControlled,
    /// Washer that indicates the preload.
    PreloadIndicatingWasher,
    /// Hydraulic tensioner.
    HydraulicTensioner,
    /// Measured elongation of the bolt.
    BoltElongation,
    /// Ultrasonic measurement.
    Ultrasonic,
    /// Bolt with strain gauges.
    InstrumentedBolt,
}

/// Scatter of the preload of one method by one publisher.
///
/// Scatter is plus or minus a percentage of the mean; the tightening factor of VDI 2230 is the
/// greatest preload over the least, so that scatter = (factor - 1) / (factor + 1).
///
/// ```
/// use shankline::tables::tightening::{TighteningMethod, TighteningScatter};
/// use shankline::units::percent;
/// let rows = TighteningScatter::of_method(TighteningMethod::TorqueWrench);
/// assert_eq!(rows[0].scatter_max, Some(percent(25.0)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct TighteningScatter {
    /// Method.
    pub method: TighteningMethod,
    /// Publisher and, where they differ, edition.
    pub publisher: &'static str,
    /// Least scatter, where the publisher gives a range.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio_option")
    )]
    pub scatter_min: Option<Ratio>,
    /// Greatest or only scatter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio_option")
    )]
    pub scatter_max: Option<Ratio>,
    /// Least tightening factor.
    pub tightening_factor_min: Option<f64>,
    /// Greatest tightening factor.
    pub tightening_factor_max: Option<f64>,
    /// How the tightening factor is known: where computed, from the scatter.
    pub tightening_factor_basis: Option<Basis>,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl TighteningScatter {
    /// Every row, by method.
    ///
    /// ```
    /// assert_eq!(shankline::tables::tightening::TighteningScatter::all().len(), 27);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::tightening_scatter::TIGHTENING_SCATTER
    }

    /// What every publisher gives for a method.
    ///
    /// ```
    /// use shankline::tables::tightening::{TighteningMethod, TighteningScatter};
    /// let rows = TighteningScatter::of_method(TighteningMethod::YieldControlled);
    /// assert_eq!(rows.len(), 3);
    /// ```
    #[must_use]
    pub fn of_method(method: TighteningMethod) -> &'static [Self] {
        rows_of(Self::all(), &method, |row| row.method)
    }

    /// What the user of this row must be told, if it was recalled, not read.
    ///
    /// ```
    /// use shankline::tables::tightening::{TighteningMethod, TighteningScatter};
    /// let rows = TighteningScatter::of_method(TighteningMethod::ImpactWrench);
    /// assert_eq!(rows[0].cautions().iter().count(), 1);
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory(
            "scatter of the preload",
            self.provenance,
        ))
    }
}

/// Direction of the service load on a joint.
///
/// ```
/// use shankline::tables::tightening::{Embedment, LoadDirection};
/// assert_eq!(Embedment::all()[0].load, LoadDirection::Axial);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum LoadDirection {
    /// Along the bolt.
    Axial,
    /// Across the bolt.
    Shear,
}

/// How much each pair of surfaces embeds after tightening, by VDI 2230 Part 1 Table 5.
///
/// ```
/// use shankline::tables::tightening::{Embedment, LoadDirection};
/// use shankline::units::micrometres;
/// # fn main() -> Result<(), shankline::Error> {
/// let row = Embedment::find(micrometres(25.0), LoadDirection::Shear)?;
/// assert_eq!(row.bearing_face, micrometres(4.5));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Embedment {
    /// Least roughness Rz, itself included.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub roughness_from: Option<Length>,
    /// Roughness Rz the row ends below, itself excluded.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub roughness_below: Length,
    /// Direction of the load.
    pub load: LoadDirection,
    /// Embedment of the thread.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub thread: Length,
    /// Embedment of the head's or the nut's bearing face, each.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub bearing_face: Length,
    /// Embedment of an interface between plies, each.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub interface: Length,
    /// Source of the row.
    pub provenance: Provenance,
}

impl Embedment {
    /// Every row.
    ///
    /// ```
    /// assert_eq!(shankline::tables::tightening::Embedment::all().len(), 6);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::embedments::EMBEDMENTS
    }

    /// The row for a mean roughness depth Rz and a direction of load.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a roughness that is not positive and finite, or of 160 micrometres
    /// and more.
    ///
    /// ```
    /// use shankline::tables::tightening::{Embedment, LoadDirection};
    /// use shankline::units::micrometres;
    /// let error = Embedment::find(micrometres(160.0), LoadDirection::Axial).unwrap_err();
    /// assert!(error.to_string().ends_with("greater than zero and below 0.160 mm (0.0063 in)"));
    /// ```
    pub fn find(roughness: Length, load: LoadDirection) -> Result<&'static Self, Error> {
        positive("roughness Rz", roughness)?;
        Self::all()
            .iter()
            .find(|row| row.load == load && roughness < row.roughness_below)
            .ok_or_else(|| {
                let greatest = Self::all().iter().map(|row| row.roughness_below);
                let greatest = greatest.fold(Length::default(), Length::max);
                out_of_range("roughness Rz", roughness, Allowed::Below(greatest.into()))
            })
    }

    /// Embedment of a whole joint, fZ: the thread once, each bearing face, each interface.
    ///
    /// A through bolt with a nut has two bearing faces, a screw in a tapped hole one; n plies and
    /// washers touch each other in n - 1 interfaces.
    ///
    /// ```
    /// use shankline::tables::tightening::{Embedment, LoadDirection};
    /// use shankline::units::micrometres;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let row = Embedment::find(micrometres(16.0), LoadDirection::Axial)?;
    /// // Two plies under head and nut: 3 + 2 * 3 + 1 * 2 micrometres.
    /// assert!((row.of_joint(2, 1) - micrometres(11.0)).value.abs() < 1e-15);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn of_joint(&self, bearing_faces: u16, interfaces: u16) -> Length {
        self.thread
            + f64::from(bearing_faces) * self.bearing_face
            + f64::from(interfaces) * self.interface
    }

    /// What the user of this row must be told, if it was recalled, not read.
    ///
    /// ```
    /// use shankline::tables::tightening::Embedment;
    /// assert_eq!(Embedment::all()[0].cautions().iter().count(), 1);
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory("embedment", self.provenance))
    }
}

/// Rule for turning the nut of a structural bolt.
///
/// ```
/// use shankline::tables::tightening::TurnRule;
/// assert_ne!(TurnRule::Rcsc, TurnRule::En1090Combined);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum TurnRule {
    /// RCSC Specification, turn-of-nut: from snug-tight, by the length of the bolt from under the
    /// head to its end.
    Rcsc,
    /// EN 1090-2, combined method: after the first step with the wrench, by the total thickness of
    /// plies and washers.
    En1090Combined,
}

/// Slope of the outer faces, under head and nut, against the axis of the bolt.
///
/// ```
/// use shankline::tables::tightening::{NutTurn, OuterFaces};
/// assert_eq!(NutTurn::all()[0].faces, OuterFaces::BothNormal);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum OuterFaces {
    /// Both normal to the axis.
    BothNormal,
    /// One normal, the other sloped not more than 1 in 20, without bevelled washer.
    OneSloped,
    /// Both sloped not more than 1 in 20, without bevelled washers.
    BothSloped,
}

/// How far a structural code turns the nut.
///
/// RCSC (2014, Table 8.2) holds for hexagon heads with all plies of steel; the tolerance of the turn
/// was not read. Beyond 12 diameters it asks for a test in a tension calibrator. EN 1090-2 gives no
/// angle above 10 diameters.
///
/// ```
/// use shankline::tables::tightening::{NutTurn, OuterFaces, TurnRule};
/// use shankline::units::{degrees, inches};
/// # fn main() -> Result<(), shankline::Error> {
/// // 3/4 in bolt of 2-1/2 in between parallel faces: a third of a turn from snug.
/// let row = NutTurn::find(TurnRule::Rcsc, OuterFaces::BothNormal, inches(2.5), inches(0.75))?;
/// assert_eq!(row.turn, degrees(120.0));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct NutTurn {
    /// Rule.
    pub rule: TurnRule,
    /// Outer faces.
    pub faces: OuterFaces,
    /// Length (RCSC) or grip (EN 1090-2) over diameter that the row begins at.
    pub diameters_from: f64,
    /// Length or grip over diameter that the row ends at.
    pub diameters_to: f64,
    /// Turn of the nut.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub turn: Angle,
    /// Source of the row.
    pub provenance: Provenance,
}

/// A tenth of a nanometre, in metres.
const SAME: f64 = 1e-10;

impl NutTurn {
    /// Every row.
    ///
    /// ```
    /// assert_eq!(shankline::tables::tightening::NutTurn::all().len(), 12);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::turns::TURNS
    }

    /// The turn for a length of the bolt (RCSC) or a grip (EN 1090-2), and a diameter.
    ///
    /// RCSC rows run over one limit up to and including the next; EN 1090-2 rows from one limit
    /// up to below the next, the last one to 10 diameters included.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a length or diameter that is not positive and finite, or a length
    /// beyond the table; [`Error::NoValue`] for sloped faces by EN 1090-2.
    ///
    /// ```
    /// use shankline::tables::tightening::{NutTurn, OuterFaces, TurnRule};
    /// use shankline::units::{degrees, millimetres};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let find = |grip| NutTurn::find(
    ///     TurnRule::En1090Combined, OuterFaces::BothNormal, millimetres(grip), millimetres(20.0),
    /// );
    /// assert_eq!(find(39.0)?.turn, degrees(60.0));
    /// assert_eq!(find(40.0)?.turn, degrees(90.0));
    /// assert!(find(201.0).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn find(
        rule: TurnRule,
        faces: OuterFaces,
        length: Length,
        diameter: Length,
    ) -> Result<&'static Self, Error> {
        let what = match rule {
            TurnRule::Rcsc => "length of the bolt",
            TurnRule::En1090Combined => "grip",
        };
        positive("nominal diameter", diameter)?;
        positive(what, length)?;
        let rows = || {
            Self::all()
                .iter()
                .filter(|row| row.rule == rule && row.faces == faces)
        };
        let Some(last) = rows().next_back() else {
            return Err(Error::NoValue {
                quantity: "turn of the nut",
                subject: "sloped faces by EN 1090-2".into(),
                reason: "the code asks for a test",
            });
        };
        // A length of exactly four diameters must not fall on either side by the last bit.
        let limit = |diameters: f64| diameters * diameter;
        let reaches = |row: &&Self| {
            let open = rule == TurnRule::En1090Combined && row.diameters_to < last.diameters_to;
            let slack = if open { -SAME } else { SAME };
            length.value < limit(row.diameters_to).value + slack
        };
        rows().find(reaches).ok_or_else(|| {
            out_of_range(
                what,
                length,
                Allowed::AtMost(limit(last.diameters_to).into()),
            )
        })
    }
}
