//! What a builder is told of loads, surroundings, tightening, rules and methods.

use alloc::string::String;

use super::{JointBuilder, Surroundings};
use crate::joint::whole::{
    JointMethods, Pattern, Prying, Repeats, Scope, SetAside, Tightening, TorqueTightening,
};
use crate::joint::{Environment, Given, LengthRules};
use crate::preload::{NutFactor, PreloadTarget};
use crate::strength::check::Mode;
use crate::tables::galvanic::Exposure;
use crate::units::{Force, ThermodynamicTemperature};

impl JointBuilder {
    /// How many such bolts stand in a row along the load, and how many rows there are.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let splice = Joint::builder("M20").rows(3, 2);
    /// ```
    pub const fn rows(mut self, along: usize, across: usize) -> Self {
        self.pattern = Some(Pattern::Rows { along, across });
        self
    }

    /// How such bolts stand.
    ///
    /// ```
    /// # use shankline::joint::Pattern;
    /// # use shankline::prelude::*;
    /// let alone = Joint::builder("M20").pattern(Pattern::Single);
    /// ```
    pub const fn pattern(mut self, pattern: Pattern) -> Self {
        self.pattern = Some(pattern);
        self
    }

    /// The load of one bolt across its axis.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let sheared = Joint::builder("M8").across("2 kN");
    /// ```
    pub fn across(mut self, load: impl Given<Force>) -> Self {
        if let Some(load) = self.keep(load.given()) {
            self.across = load;
        }
        self
    }

    /// The load of one bolt along its axis, pulling.
    ///
    /// ```
    /// # use shankline::joint::Prying;
    /// # use shankline::prelude::*;
    /// let pulled = Joint::builder("M8").along("2 kN").prying(Prying::None);
    /// ```
    pub fn along(mut self, load: impl Given<Force>) -> Self {
        if let Some(load) = self.keep(load.given()) {
            self.along = load;
        }
        self
    }

    /// Whether plies that bend add to the load along the axis.
    ///
    /// ```
    /// # use shankline::joint::Prying;
    /// # use shankline::prelude::*;
    /// let stiff = Joint::builder("M8").along("2 kN").prying(Prying::None);
    /// ```
    pub const fn prying(mut self, prying: Prying) -> Self {
        self.prying = Some(prying);
        self
    }

    /// Between what the load goes.
    ///
    /// ```
    /// # use shankline::joint::Repeats;
    /// # use shankline::prelude::*;
    /// let steady = Joint::builder("M8").repeats(Repeats::Never);
    /// ```
    pub const fn repeats(mut self, repeats: Repeats) -> Self {
        self.repeats = Some(repeats);
        self
    }

    /// What shock multiplies the loads by.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let swing = Joint::builder("M8").across("2 kN").shock_factor(2.0);
    /// ```
    pub const fn shock_factor(mut self, factor: f64) -> Self {
        self.shock_factor = Some(factor);
        self
    }

    /// The load factor of the code, for methods that want factored loads; 1 if it is in the loads already.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let factored = Joint::builder("M8").across("2 kN").load_factor(1.0);
    /// ```
    pub const fn load_factor(mut self, factor: f64) -> Self {
        self.load_factor = Some(factor);
        self
    }

    /// The whole of what it lives through.
    ///
    /// ```
    /// # use shankline::joint::Environment;
    /// # use shankline::prelude::*;
    /// let indoors = Joint::builder("M8").environment(Environment::workshop());
    /// ```
    pub const fn environment(mut self, environment: Environment) -> Self {
        self.temperatures = Some((environment.coldest, environment.hottest));
        self.exposure = Some(environment.exposure);
        self.surroundings = Surroundings {
            vibration: Some(environment.vibration),
            rotates: Some(environment.rotates),
            dangerous_if_lost: Some(environment.dangerous_if_lost),
            refits: Some(environment.refits),
        };
        self
    }

    /// Its lowest and highest temperature.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let outdoors = Joint::builder("M8").temperatures("-15 C", "45 C");
    /// ```
    pub fn temperatures(
        mut self,
        coldest: impl Given<ThermodynamicTemperature>,
        hottest: impl Given<ThermodynamicTemperature>,
    ) -> Self {
        let (coldest, hottest) = (self.keep(coldest.given()), self.keep(hottest.given()));
        self.temperatures = coldest.zip(hottest);
        self
    }

    /// Whether it is in the dry or in the weather.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # use shankline::tables::galvanic::Exposure;
    /// let outdoors = Joint::builder("M8").exposure(Exposure::Harsh);
    /// ```
    pub const fn exposure(mut self, exposure: Exposure) -> Self {
        self.exposure = Some(exposure);
        self
    }

    /// Whether it is shaken.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let joint = Joint::builder("M8").ply("a", "5 mm").vibration(true).build()?;
    /// assert_eq!(joint.nut.unwrap().style, NutStyle::Iso7040); // a lock nut
    /// # Ok(())
    /// # }
    /// ```
    pub const fn vibration(mut self, vibration: bool) -> Self {
        self.surroundings.vibration = Some(vibration);
        self
    }

    /// Whether something turns on the bolt.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let pivot = Joint::builder("M8").rotates(true);
    /// ```
    pub const fn rotates(mut self, rotates: bool) -> Self {
        self.surroundings.rotates = Some(rotates);
        self
    }

    /// Whether its loss endangers anybody.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let swing = Joint::builder("M8").dangerous_if_lost(true);
    /// ```
    pub const fn dangerous_if_lost(mut self, dangerous: bool) -> Self {
        self.surroundings.dangerous_if_lost = Some(dangerous);
        self
    }

    /// How often it is taken apart and put together again.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let cover = Joint::builder("M8").refits(3);
    /// ```
    pub const fn refits(mut self, refits: usize) -> Self {
        self.surroundings.refits = Some(refits);
        self
    }

    /// Tightened with an ordinary wrench: nothing counts on preload.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let snug = Joint::builder("M8").snug();
    /// ```
    pub const fn snug(mut self) -> Self {
        self.tightening = Some(Tightening::Snug);
        self
    }

    /// Tightened with a torque wrench: the nut factor of thread and finish, and what preload is aimed at.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let tight = Joint::builder("M8").torque(NutFactor::new(0.15, 0.18, 0.22)?, PreloadTarget::Reusable);
    /// # Ok(())
    /// # }
    /// ```
    pub const fn torque(mut self, nut_factor: NutFactor, target: PreloadTarget) -> Self {
        self.tightening = Some(Tightening::Torque(TorqueTightening::new(
            nut_factor, target,
        )));
        self
    }

    /// How it is tightened, in full.
    ///
    /// ```
    /// # use shankline::joint::Tightening;
    /// # use shankline::prelude::*;
    /// let snug = Joint::builder("M8").tightening(Tightening::Snug);
    /// ```
    pub const fn tightening(mut self, tightening: Tightening) -> Self {
        self.tightening = Some(tightening);
        self
    }

    /// The rules for its length.
    ///
    /// ```
    /// # use shankline::joint::RuleSet;
    /// # use shankline::prelude::*;
    /// let structural = Joint::builder("M20").rules(RuleSet::En1090.rules(UnitSystem::Si));
    /// ```
    pub const fn rules(mut self, rules: LengthRules) -> Self {
        self.rules = Some(rules);
        self
    }

    /// The methods of the check.
    ///
    /// ```
    /// # use shankline::joint::JointMethods;
    /// # use shankline::prelude::*;
    /// let structural = Joint::builder("M20").methods(JointMethods::en_1993());
    /// ```
    pub const fn methods(mut self, methods: JointMethods) -> Self {
        self.methods = Some(methods);
        self
    }

    /// Machine design with this factor.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let safer = Joint::builder("M8").design_factor(3.0);
    /// ```
    pub const fn design_factor(self, factor: f64) -> Self {
        self.methods(JointMethods::machine_design(factor))
    }

    /// What the verdict is to speak of.
    ///
    /// ```
    /// # use shankline::joint::Scope;
    /// # use shankline::prelude::*;
    /// let bolt = Joint::builder("M8").scope(Scope::Bolt);
    /// ```
    pub const fn scope(mut self, scope: Scope) -> Self {
        self.scope = scope;
        self
    }

    /// A mode that need not be decided here, and why.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # use shankline::strength::check::Mode;
    /// let joint = Joint::builder("M8").set_aside(Mode::Corrosion, "painted over (invented)");
    /// ```
    pub fn set_aside(mut self, mode: Mode, reason: impl Into<String>) -> Self {
        self.set_aside.push(SetAside::new(mode, reason));
        self
    }
}
