//! What a builder is told of loads, surroundings, tightening, rules and methods.

use alloc::string::String;

use super::JointBuilder;
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
    pub fn rows(self, along: usize, across: usize) -> Self {
        self.pattern(Pattern::Rows { along, across })
    }

    /// How such bolts stand.
    ///
    /// ```
    /// # use shankline::joint::Pattern;
    /// # use shankline::prelude::*;
    /// let alone = Joint::builder("M20").pattern(Pattern::Single);
    /// ```
    pub fn pattern(self, pattern: Pattern) -> Self {
        self.say("the pattern", |own| &mut own.pattern, Some(pattern))
    }

    /// The load of one bolt across its axis.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let sheared = Joint::builder("M8").across("2 kN");
    /// ```
    pub fn across(mut self, load: impl Given<Force>) -> Self {
        match self.keep(load.given()) {
            Some(load) => self.say("the load across", |own| &mut own.across, load),
            None => self,
        }
    }

    /// The load of one bolt along its axis, pulling.
    ///
    /// ```
    /// # use shankline::joint::Prying;
    /// # use shankline::prelude::*;
    /// let pulled = Joint::builder("M8").along("2 kN").prying(Prying::None);
    /// ```
    pub fn along(mut self, load: impl Given<Force>) -> Self {
        match self.keep(load.given()) {
            Some(load) => self.say("the load along", |own| &mut own.along, load),
            None => self,
        }
    }

    /// Whether plies that bend add to the load along the axis.
    ///
    /// ```
    /// # use shankline::joint::Prying;
    /// # use shankline::prelude::*;
    /// let stiff = Joint::builder("M8").along("2 kN").prying(Prying::None);
    /// ```
    pub fn prying(self, prying: Prying) -> Self {
        self.say("the prying", |own| &mut own.prying, Some(prying))
    }

    /// Between what the load goes.
    ///
    /// ```
    /// # use shankline::joint::Repeats;
    /// # use shankline::prelude::*;
    /// let steady = Joint::builder("M8").repeats(Repeats::Never);
    /// ```
    pub fn repeats(self, repeats: Repeats) -> Self {
        self.say(
            "how the load repeats",
            |own| &mut own.repeats,
            Some(repeats),
        )
    }

    /// What shock multiplies the loads by.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let swing = Joint::builder("M8").across("2 kN").shock_factor(2.0);
    /// ```
    pub fn shock_factor(self, factor: f64) -> Self {
        self.say(
            "the shock factor",
            |own| &mut own.shock_factor,
            Some(factor),
        )
    }

    /// The load factor of the code, for methods that want factored loads; 1 if it is in the loads already.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let factored = Joint::builder("M8").across("2 kN").load_factor(1.0);
    /// ```
    pub fn load_factor(self, factor: f64) -> Self {
        self.say("the load factor", |own| &mut own.load_factor, Some(factor))
    }

    /// The whole of what it lives through.
    ///
    /// ```
    /// # use shankline::joint::Environment;
    /// # use shankline::prelude::*;
    /// let indoors = Joint::builder("M8").environment(Environment::workshop());
    /// ```
    pub fn environment(self, environment: Environment) -> Self {
        self.say(
            "its temperatures",
            |own| &mut own.temperatures,
            Some((environment.coldest, environment.hottest)),
        )
        .exposure(environment.exposure)
        .vibration(environment.vibration)
        .rotates(environment.rotates)
        .dangerous_if_lost(environment.dangerous_if_lost)
        .refits(environment.refits)
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
        match coldest.zip(hottest) {
            Some(both) => self.say("its temperatures", |own| &mut own.temperatures, Some(both)),
            None => self,
        }
    }

    /// Whether it is in the dry or in the weather.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # use shankline::tables::galvanic::Exposure;
    /// let outdoors = Joint::builder("M8").exposure(Exposure::Harsh);
    /// ```
    pub fn exposure(self, exposure: Exposure) -> Self {
        self.say("the exposure", |own| &mut own.exposure, Some(exposure))
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
    pub fn vibration(self, vibration: bool) -> Self {
        self.say(
            "whether it is shaken",
            |own| &mut own.surroundings.vibration,
            Some(vibration),
        )
    }

    /// Whether something turns on the bolt.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let pivot = Joint::builder("M8").rotates(true);
    /// ```
    pub fn rotates(self, rotates: bool) -> Self {
        self.say(
            "whether something turns on it",
            |own| &mut own.surroundings.rotates,
            Some(rotates),
        )
    }

    /// Whether its loss endangers anybody.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let swing = Joint::builder("M8").dangerous_if_lost(true);
    /// ```
    pub fn dangerous_if_lost(self, dangerous: bool) -> Self {
        self.say(
            "whether its loss endangers anybody",
            |own| &mut own.surroundings.dangerous_if_lost,
            Some(dangerous),
        )
    }

    /// How often it is taken apart and put together again.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let cover = Joint::builder("M8").refits(3);
    /// ```
    pub fn refits(self, refits: usize) -> Self {
        self.say(
            "how often it is taken apart",
            |own| &mut own.surroundings.refits,
            Some(refits),
        )
    }

    /// Tightened with an ordinary wrench: nothing counts on preload.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let snug = Joint::builder("M8").snug();
    /// ```
    pub fn snug(self) -> Self {
        self.tightening(Tightening::Snug)
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
    pub fn torque(self, nut_factor: NutFactor, target: PreloadTarget) -> Self {
        self.tightening(Tightening::Torque(TorqueTightening::new(
            nut_factor, target,
        )))
    }

    /// How it is tightened, in full.
    ///
    /// ```
    /// # use shankline::joint::Tightening;
    /// # use shankline::prelude::*;
    /// let snug = Joint::builder("M8").tightening(Tightening::Snug);
    /// ```
    pub fn tightening(self, tightening: Tightening) -> Self {
        self.say(
            "the tightening",
            |own| &mut own.tightening,
            Some(tightening),
        )
    }

    /// The rules for its length.
    ///
    /// ```
    /// # use shankline::joint::RuleSet;
    /// # use shankline::prelude::*;
    /// let structural = Joint::builder("M20").rules(RuleSet::En1090.rules(UnitSystem::Si));
    /// ```
    pub fn rules(self, rules: LengthRules) -> Self {
        self.say(
            "the rules for the length",
            |own| &mut own.rules,
            Some(rules),
        )
    }

    /// The methods of the check.
    ///
    /// ```
    /// # use shankline::joint::JointMethods;
    /// # use shankline::prelude::*;
    /// let structural = Joint::builder("M20").methods(JointMethods::en_1993());
    /// ```
    pub fn methods(self, methods: JointMethods) -> Self {
        self.say("the methods", |own| &mut own.methods, Some(methods))
    }

    /// Machine design with this factor.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let safer = Joint::builder("M8").design_factor(3.0);
    /// ```
    pub fn design_factor(self, factor: f64) -> Self {
        self.methods(JointMethods::machine_design(factor))
    }

    /// What the verdict is to speak of.
    ///
    /// ```
    /// # use shankline::joint::Scope;
    /// # use shankline::prelude::*;
    /// let bolt = Joint::builder("M8").scope(Scope::Bolt);
    /// ```
    pub fn scope(self, scope: Scope) -> Self {
        self.say("the scope", |own| &mut own.scope, scope)
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
