//! A connection said in the words of the trade.

use alloc::{format, string::String, vec::Vec};

use super::{
    Alternation, Combination, Connection, InPlane, LoadCase, OutOfPlane, Outline, Plate,
    PlatePrying, Side,
};
use crate::error::Error;
use crate::joint::{Given, JointBuilder};
use crate::strength::group::BoltPattern;
use crate::units::{Angle, Force, Length, Torque};

/// Collects what is said of a [`Connection`]. Made by [`Connection::builder`]; text or typed quantities alike
/// ([`Given`]).
///
/// [`held`](Self::held), [`buckling_length`](Self::buckling_length) and [`grain`](Self::grain) speak of the plate added last, [`force`](Self::force),
/// [`moment`](Self::moment) and [`at`](Self::at) of the case added last. Each fact is said once: said again,
/// [`build`](Self::build) refuses it. Nothing is taken for granted but what the template was granted.
///
/// ```
/// use shankline::connection::{Connection, InPlane, Outline, Side};
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let bolt = Joint::builder("M16").ply("cleat", "10 mm").ply("web", "8 mm");
/// let cleat = Connection::builder(bolt)
///     .rows_and_columns(3, 1, "70 mm", "70 mm")
///     .plate("cleat", Outline::rectangle("100 mm", "210 mm")?).held(Side::Left)
///     .in_plane(InPlane::Elastic)
///     .case("reaction").force("0 kN", "-60 kN", "0 kN").at("-50 mm", "0 mm", "0 mm")
///     .build()?;
/// assert_eq!(cleat.bolts.bolts().len(), 3);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug)]
#[must_use]
pub struct ConnectionBuilder {
    title: Option<String>,
    bolt: JointBuilder,
    bolts: Option<BoltPattern>,
    plates: Vec<Plate>,
    loaded: Option<String>,
    in_plane: Option<InPlane>,
    out_of_plane: Option<OutOfPlane>,
    prying: Option<PlatePrying>,
    cases: Vec<LoadCase>,
    /// What was said of the case added last: its force, its moment, where the force acts.
    said: [bool; 3],
    combinations: Vec<Combination>,
    alternations: Vec<Alternation>,
    error: Option<Error>,
}

impl Connection {
    /// Starts a connection with one of its bolts: a joint without loads, pattern, and distances to other holes, not built
    /// yet. Of one that is, give its [builder](crate::joint::Joint::to_builder).
    ///
    /// ```
    /// use shankline::connection::Connection;
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt = Joint::builder("M16").ply("a", "10 mm").ply("b", "10 mm");
    /// assert!(Connection::builder(bolt).build().is_err()); // where do they stand?
    /// # Ok(())
    /// # }
    /// ```
    pub fn builder(bolt: JointBuilder) -> ConnectionBuilder {
        ConnectionBuilder {
            title: None,
            bolt,
            bolts: None,
            plates: Vec::new(),
            loaded: None,
            in_plane: None,
            out_of_plane: None,
            prying: None,
            cases: Vec::new(),
            said: [true; 3],
            combinations: Vec::new(),
            alternations: Vec::new(),
            error: None,
        }
    }
}

impl ConnectionBuilder {
    fn keep<T>(&mut self, value: Result<T, Error>) -> Option<T> {
        match value {
            Ok(value) => Some(value),
            Err(error) => {
                self.error.get_or_insert(error);
                None
            }
        }
    }

    fn refuse(mut self, why: String) -> Self {
        self.error.get_or_insert(Error::Mismatch(why));
        self
    }

    fn say<T>(
        mut self,
        what: &str,
        slot: impl FnOnce(&mut Self) -> &mut Option<T>,
        value: T,
    ) -> Self {
        let slot = slot(&mut self);
        if slot.is_some() {
            return self.refuse(format!("said twice: {what}"));
        }
        *slot = Some(value);
        self
    }

    /// What a drawing would call it; without it the title of the template.
    ///
    /// ```
    /// # use shankline::connection::Connection;
    /// # use shankline::prelude::*;
    /// # let bolt = Joint::builder("M16").ply("a", "10 mm").ply("b", "10 mm");
    /// let named = Connection::builder(bolt).title("mezzanine beam splice (invented)");
    /// ```
    pub fn title(self, title: impl Into<String>) -> Self {
        self.say("the title", |own| &mut own.title, title.into())
    }

    /// Where the bolts stand.
    ///
    /// ```
    /// # use shankline::connection::Connection;
    /// # use shankline::prelude::*;
    /// # use shankline::strength::group::{BoltPattern, GroupBolt};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let bolt = Joint::builder("M16").ply("a", "10 mm").ply("b", "10 mm");
    /// let at = |x, y| GroupBolt::new(millimetres(x), millimetres(y));
    /// let by_hand = BoltPattern::new([at(0.0, 0.0), at(60.0, 0.0), at(30.0, 55.0)])?;
    /// let three = Connection::builder(bolt).bolts(by_hand);
    /// # Ok(())
    /// # }
    /// ```
    pub fn bolts(self, bolts: BoltPattern) -> Self {
        self.say("where the bolts stand", |own| &mut own.bolts, bolts)
    }

    /// Rows one above the other and columns side by side about the origin: so many rows, so many columns, the pitch
    /// between rows, the gauge between columns.
    ///
    /// ```
    /// # use shankline::connection::Connection;
    /// # use shankline::prelude::*;
    /// # let bolt = Joint::builder("M16").ply("a", "10 mm").ply("b", "10 mm");
    /// let twelve = Connection::builder(bolt).rows_and_columns(6, 2, "70 mm", "90 mm");
    /// ```
    pub fn rows_and_columns(
        mut self,
        rows: usize,
        columns: usize,
        pitch: impl Given<Length>,
        gauge: impl Given<Length>,
    ) -> Self {
        let made = pitch
            .given()
            .and_then(|pitch| BoltPattern::rows_and_columns(rows, columns, pitch, gauge.given()?));
        match self.keep(made) {
            Some(bolts) => self.bolts(bolts),
            None => self,
        }
    }

    /// Evenly on a circle about the origin, the first at its right.
    ///
    /// ```
    /// # use shankline::connection::Connection;
    /// # use shankline::prelude::*;
    /// # let bolt = Joint::builder("M16").ply("a", "10 mm").ply("b", "10 mm");
    /// let foot = Connection::builder(bolt).circle(8, "240 mm");
    /// ```
    pub fn circle(mut self, count: usize, diameter: impl Given<Length>) -> Self {
        let made = diameter
            .given()
            .and_then(|diameter| BoltPattern::circle(count, diameter));
        match self.keep(made) {
            Some(bolts) => self.bolts(bolts),
            None => self,
        }
    }

    /// The outline of a ply of the template, by its name.
    ///
    /// ```
    /// # use shankline::connection::{Connection, Outline};
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let bolt = Joint::builder("M16").ply("a", "10 mm").ply("b", "10 mm");
    /// let plate = Connection::builder(bolt).plate("a", Outline::rectangle("100 mm", "160 mm")?);
    /// # Ok(())
    /// # }
    /// ```
    pub fn plate(mut self, ply: impl Into<String>, outline: Outline) -> Self {
        self.plates.push(Plate::new(ply, outline));
        self
    }

    /// On which side the plate added last is held.
    ///
    /// ```
    /// # use shankline::connection::{Connection, Outline, Side};
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let bolt = Joint::builder("M16").ply("a", "10 mm").ply("b", "10 mm");
    /// let plate = Outline::rectangle("100 mm", "160 mm")?;
    /// let welded = Connection::builder(bolt).plate("a", plate).held(Side::Left);
    /// # Ok(())
    /// # }
    /// ```
    pub fn held(mut self, side: Side) -> Self {
        match self.plates.last_mut() {
            Some(plate) if plate.held.is_none() => plate.held = Some(side),
            Some(_) => return self.refuse("said twice: where a plate is held".into()),
            None => return self.refuse("where a plate is held is said before any plate".into()),
        }
        self
    }

    /// Over which length the plate added last can buckle where a load presses it ([`Plate::buckling_length`]).
    ///
    /// ```
    /// # use shankline::connection::{Connection, Outline, Side};
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let bolt = Joint::builder("M16").ply("a", "10 mm").ply("b", "10 mm");
    /// let plate = Outline::rectangle("100 mm", "160 mm")?;
    /// let strut = Connection::builder(bolt).plate("a", plate).held(Side::Left).buckling_length("84 mm");
    /// # Ok(())
    /// # }
    /// ```
    pub fn buckling_length(mut self, length: impl Given<Length>) -> Self {
        let Some(length) = self.keep(length.given()) else {
            return self;
        };
        match self.plates.last_mut() {
            Some(plate) if plate.buckling_length.is_none() => plate.buckling_length = Some(length),
            Some(_) => return self.refuse("said twice: the buckling length of a plate".into()),
            None => {
                return self.refuse("a buckling length is said before any plate".into());
            }
        }
        self
    }

    /// What is fixed to the plate added last and brings its load or takes it ([`Plate::footprint`]).
    ///
    /// ```
    /// # use shankline::connection::{Connection, Outline};
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let bolt = Joint::builder("M16").ply("foot", "20 mm").ply("sill", "20 mm");
    /// let plate = Outline::rectangle("200 mm", "200 mm")?;
    /// let post = Connection::builder(bolt).plate("foot", plate).footprint(Outline::rectangle("90 mm", "90 mm")?);
    /// # Ok(())
    /// # }
    /// ```
    pub fn footprint(mut self, outline: Outline) -> Self {
        match self.plates.last_mut() {
            Some(plate) if plate.footprint.is_none() => plate.footprint = Some(outline),
            Some(_) => return self.refuse("said twice: what is fixed to a plate".into()),
            None => return self.refuse("what is fixed to a plate is said before any plate".into()),
        }
        self
    }

    /// The direction of the grain of the plate added last, anticlockwise from x.
    ///
    /// ```
    /// # use shankline::connection::{Connection, Outline};
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let bolt = Joint::builder("M16").ply("post", "90 mm").timber("C24", "0 deg").ply("b", "8 mm");
    /// let post = Outline::rectangle("140 mm", "1200 mm")?;
    /// let upright = Connection::builder(bolt).plate("post", post).grain("90 deg");
    /// # Ok(())
    /// # }
    /// ```
    pub fn grain(mut self, direction: impl Given<Angle>) -> Self {
        let Some(direction) = self.keep(direction.given()) else {
            return self;
        };
        match self.plates.last_mut() {
            Some(plate) if plate.grain.is_none() => plate.grain = Some(direction),
            Some(_) => return self.refuse("said twice: the grain of a plate".into()),
            None => return self.refuse("the grain of a plate is said before any plate".into()),
        }
        self
    }

    /// A ply of the part that the loads act on ([`Connection::loaded`]).
    ///
    /// ```
    /// # use shankline::connection::Connection;
    /// # use shankline::prelude::*;
    /// # let bolt = Joint::builder("M16").ply("hanger", "10 mm").ply("beam", "10 mm");
    /// let hung = Connection::builder(bolt).loaded("hanger");
    /// ```
    pub fn loaded(self, ply: impl Into<String>) -> Self {
        self.say("the loaded ply", |own| &mut own.loaded, ply.into())
    }

    /// How loads in the plane come to the bolts.
    ///
    /// ```
    /// # use shankline::connection::{Connection, InPlane};
    /// # use shankline::prelude::*;
    /// # let bolt = Joint::builder("M16").ply("a", "10 mm").ply("b", "10 mm");
    /// let elastic = Connection::builder(bolt).in_plane(InPlane::Elastic);
    /// ```
    pub fn in_plane(self, method: InPlane) -> Self {
        self.say("the method in the plane", |own| &mut own.in_plane, method)
    }

    /// How moments out of the plane come to the bolts.
    ///
    /// ```
    /// # use shankline::connection::{Connection, OutOfPlane};
    /// # use shankline::prelude::*;
    /// # let bolt = Joint::builder("M16").ply("a", "10 mm").ply("b", "10 mm");
    /// let tilting = Connection::builder(bolt).out_of_plane(OutOfPlane::PressedEdge { ply: "a".into() });
    /// ```
    pub fn out_of_plane(self, method: OutOfPlane) -> Self {
        self.say(
            "the method out of the plane",
            |own| &mut own.out_of_plane,
            method,
        )
    }

    /// The flange that bends and pries its bolts.
    ///
    /// ```
    /// # use shankline::connection::{Connection, PlatePrying};
    /// # use shankline::prelude::*;
    /// # let bolt = Joint::builder("M16").ply("a", "10 mm").ply("b", "10 mm");
    /// let flange = PlatePrying::new("a", millimetres(80.0), millimetres(45.0), millimetres(40.0));
    /// let tee = Connection::builder(bolt).prying(flange);
    /// ```
    pub fn prying(self, plate: PlatePrying) -> Self {
        self.say("prying", |own| &mut own.prying, plate)
    }

    /// A load case without load yet: [`force`](Self::force), [`moment`](Self::moment) and [`at`](Self::at) speak of it.
    ///
    /// ```
    /// # use shankline::connection::Connection;
    /// # use shankline::prelude::*;
    /// # let bolt = Joint::builder("M16").ply("a", "10 mm").ply("b", "10 mm");
    /// let empty = Connection::builder(bolt).case("full").circle(4, "90 mm").build().unwrap();
    /// assert!(empty.check().is_err()); // no load at all
    /// ```
    pub fn case(mut self, name: impl Into<String>) -> Self {
        self = self.case_is_whole();
        let nothing = [Torque::default(); 3];
        self.cases.push(LoadCase::of_moment(name, nothing));
        self.said = [false; 3];
        self
    }

    /// Refuses a force that acts nowhere: through the centroid it would be at its least.
    fn case_is_whole(self) -> Self {
        match (self.cases.last(), self.said) {
            (Some(case), [true, _, false]) => {
                let why = format!("where the force of \"{}\" acts is not said", case.name);
                self.refuse(why)
            }
            _ => self,
        }
    }

    /// The case added last, if this was not said of it.
    fn of_case(
        mut self,
        (which, what): (usize, &str),
        set: impl FnOnce(LoadCase) -> Result<LoadCase, Error>,
    ) -> Self {
        let twice = match self.said.get_mut(which) {
            Some(said) => core::mem::replace(said, true),
            None => true,
        };
        let Some(case) = self.cases.pop() else {
            return self.refuse(format!("{what} is said before any load case"));
        };
        if twice {
            return self.refuse(format!(
                "said twice, or of a case that has it: {what} of \"{}\"",
                case.name
            ));
        }
        if let Some(case) = self.keep(set(case)) {
            self.cases.push(case);
        }
        self
    }

    /// The force of the case added last: to the right, up, and parting the plies.
    ///
    /// ```
    /// # use shankline::connection::Connection;
    /// # use shankline::prelude::*;
    /// # let bolt = Joint::builder("M16").ply("a", "10 mm").ply("b", "10 mm");
    /// let wind = Connection::builder(bolt).case("wind").force("4 kN", "0 kN", "2 kN").at("0 m", "1.2 m", "0 m");
    /// ```
    pub fn force(self, x: impl Given<Force>, y: impl Given<Force>, z: impl Given<Force>) -> Self {
        self.of_case((0, "the force"), |case| {
            let force = [x.given()?, y.given()?, z.given()?];
            let moment = [case.moment_x, case.moment_y, case.moment_z];
            Ok(LoadCase::new(case.name, force, [case.x, case.y, case.z]).with_moment(moment))
        })
    }

    /// A moment of the case added last besides its force: about x, y and z.
    ///
    /// ```
    /// # use shankline::connection::Connection;
    /// # use shankline::prelude::*;
    /// # let bolt = Joint::builder("M16").ply("a", "10 mm").ply("b", "10 mm");
    /// let wind = Connection::builder(bolt).case("wind").moment("0 N m", "0 N m", "300 N m");
    /// ```
    pub fn moment(
        self,
        x: impl Given<Torque>,
        y: impl Given<Torque>,
        z: impl Given<Torque>,
    ) -> Self {
        self.of_case((1, "the moment"), |case| {
            Ok(case.with_moment([x.given()?, y.given()?, z.given()?]))
        })
    }

    /// Where the force of the case added last acts, from the origin of the pattern and the face between the parts. Each
    /// force needs its place.
    ///
    /// ```
    /// # use shankline::connection::Connection;
    /// # use shankline::prelude::*;
    /// # let bolt = Joint::builder("M16").ply("a", "10 mm").ply("b", "10 mm");
    /// let hook = Connection::builder(bolt).case("hook").force("0 kN", "-9 kN", "0 kN").at("0 mm", "0 mm", "400 mm");
    /// ```
    pub fn at(self, x: impl Given<Length>, y: impl Given<Length>, z: impl Given<Length>) -> Self {
        self.of_case((2, "the place"), |case| {
            let (x, y, z) = (x.given()?, y.given()?, z.given()?);
            Ok(LoadCase { x, y, z, ..case })
        })
    }

    /// Many cases at once.
    ///
    /// ```
    /// # use shankline::connection::{Connection, LoadCase};
    /// # use shankline::prelude::*;
    /// # let bolt = Joint::builder("M16").ply("a", "10 mm").ply("b", "10 mm");
    /// let cases = (1..=200).map(|n| {
    ///     let force = [0.0, 2e3 * f64::from(n), 0.0].map(newtons);
    ///     LoadCase::new(format!("case {n}"), force, [0.0; 3].map(millimetres))
    /// });
    /// let many = Connection::builder(bolt).cases(cases);
    /// ```
    pub fn cases(mut self, cases: impl IntoIterator<Item = LoadCase>) -> Self {
        self = self.case_is_whole();
        self.cases.extend(cases);
        self.said = [true; 3];
        self
    }

    /// A combination of cases.
    ///
    /// ```
    /// # use shankline::connection::{Combination, Connection};
    /// # use shankline::prelude::*;
    /// # let bolt = Joint::builder("M16").ply("a", "10 mm").ply("b", "10 mm");
    /// let factored = Combination::new("1.2 D + 1.6 L").plus(1.2, "dead").plus(1.6, "live");
    /// let joint = Connection::builder(bolt).combination(factored);
    /// ```
    pub fn combination(mut self, combination: Combination) -> Self {
        self.combinations.push(combination);
        self
    }

    /// A load that alternates between two cases or combinations.
    ///
    /// ```
    /// # use shankline::connection::{Alternation, Connection};
    /// # use shankline::prelude::*;
    /// # let bolt = Joint::builder("M16").ply("a", "10 mm").ply("b", "10 mm");
    /// let swings = Connection::builder(bolt).alternation(Alternation::new("left", "right").cycles(1e6));
    /// ```
    pub fn alternation(mut self, alternation: Alternation) -> Self {
        self.alternations.push(alternation);
        self
    }

    /// The connection.
    ///
    /// # Errors
    ///
    /// The first thing that could not be read or was said twice; [`Error::Mismatch`] if nobody says where the bolts
    /// stand; those of [`JointBuilder::build`]. What contradicts itself is refused by [`Connection::check`].
    ///
    /// ```
    /// use shankline::connection::Connection;
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt = Joint::builder("M16").ply("a", "10 mm").ply("b", "10 mm");
    /// let unread = Connection::builder(bolt).circle(4, "90 furlongs").case("pull").build();
    /// assert!(unread.is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn build(mut self) -> Result<Connection, Error> {
        self = self.case_is_whole();
        if let Some(error) = self.error {
            return Err(error);
        }
        let Some(bolts) = self.bolts else {
            return Err(Error::Mismatch("where the bolts stand is not said".into()));
        };
        let zero = (Force::default(), Torque::default());
        let sheared = |case: &LoadCase| {
            // Forces out of the plane beside it shear nothing.
            case.force_x != zero.0 || case.force_y != zero.0 || case.moment_z != zero.1
        };
        let joint = self.bolt.template(self.cases.iter().any(sheared))?;
        Ok(Connection {
            title: self.title.unwrap_or_else(|| joint.title.clone()),
            joint,
            bolts,
            plates: self.plates,
            loaded: self.loaded,
            in_plane: self.in_plane,
            out_of_plane: self.out_of_plane,
            prying: self.prying,
            cases: self.cases,
            combinations: self.combinations,
            alternations: self.alternations,
        })
    }
}
