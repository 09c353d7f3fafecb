//! Prevailing torques of lock nuts on a thread.

use alloc::{format, string::ToString, vec::Vec};

use super::Locking;
use crate::error::Error;
use crate::spread::Spread;
use crate::tables::locking::{PrevailingTorque, PrevailingTorqueKind};
use crate::tables::{nanometres, size_range};
use crate::thread::Thread;
use crate::units::{Length, Torque};

impl PrevailingTorque {
    /// Every publisher's rows for a thread.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if no publisher has the thread; the message gives the sizes.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tables::locking::PrevailingTorque;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!(PrevailingTorque::for_thread(&"M10".parse()?)?.len(), 12); // classes 04, 10, and 5 to 8 together
    /// let error = PrevailingTorque::for_thread(&"M42".parse()?).unwrap_err();
    /// assert_eq!(
    ///     error.to_string(),
    ///     "M42 is not in the table of prevailing torques; its sizes run from M3 to M39, \
    ///      the nearest is M39",
    /// );
    /// # Ok(())
    /// # }
    /// ```
    pub fn for_thread(thread: &Thread) -> Result<Vec<&'static Self>, Error> {
        let rows: Vec<_> = Self::rows_of(thread).collect();
        if rows.is_empty() {
            let all = Self::all_of(thread);
            return Err(Error::NotInTable {
                table: "the table of prevailing torques",
                wanted: thread.to_string(),
                available: size_range(all, thread.nominal_diameter(), |row| {
                    (row.nominal_diameter, row.size)
                }),
            });
        }
        Ok(rows)
    }

    fn all_of(thread: &Thread) -> &'static [Self] {
        if thread.is_unified() {
            Self::all_inch()
        } else {
            Self::all_metric()
        }
    }

    /// The rows of a thread, if there are any: for those who need no reason why there are none.
    fn rows_of(thread: &Thread) -> impl Iterator<Item = &'static Self> + use<> {
        let size = nanometres(thread.nominal_diameter());
        let pitch = nanometres(thread.pitch());
        Self::all_of(thread).iter().filter(move |row| {
            nanometres(row.nominal_diameter) == size && nanometres(row.thread_pitch()) == pitch
        })
    }

    /// The greatest of the [least torques for reuse](Self::reuse_minimum), the cautious one, if there is any.
    pub(crate) fn greatest_reuse_minimum(thread: &Thread) -> Option<Torque> {
        let rows = Self::rows_of(thread).filter(|row| row.kind.is_for_reuse());
        rows.map(|row| row.torque)
            .reduce(|a, b| if b > a { b } else { a })
    }

    /// The least torque a used lock nut must show to be used again, as each authority has it.
    ///
    /// The authorities disagree, for some mean the running and some the breakaway torque: a cautious
    /// check takes the larger. Some (US Navy and Air Force) allow no reuse in critical places.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if no authority has the thread: metric threads, and inch threads of
    /// 1/4 in and less, for which US Army TM 1-1500-204-23-6 has a test by hand.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tables::locking::PrevailingTorque;
    /// use shankline::units::pound_force_inches;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let limits = PrevailingTorque::reuse_minimum(&"1/2-20 UNF".parse()?)?;
    /// assert_eq!(limits.len(), 2);
    /// assert_eq!((limits[0].publisher, limits[0].torque), ("FAA AC 43.13-1B", pound_force_inches(10.0)));
    /// assert_eq!(limits[1].torque, pound_force_inches(18.0)); // US Army
    /// # Ok(())
    /// # }
    /// ```
    pub fn reuse_minimum(thread: &Thread) -> Result<Vec<&'static Self>, Error> {
        let mut rows = Self::for_thread(thread)?;
        rows.retain(|row| row.kind.is_for_reuse());
        if rows.is_empty() {
            return Err(Error::NotInTable {
                table: "the tables of prevailing torque for reuse",
                wanted: thread.to_string(),
                available: if thread.is_unified() {
                    "the US Army rejects a used nut of 1/4 in or less that fingers can run down"
                        .into()
                } else {
                    "they have inch threads only".into()
                },
            });
        }
        Ok(rows)
    }

    /// The running torque of a new lock nut, from the least of the first removal to the greatest of the
    /// first installation by one publisher.
    ///
    /// No standard gives a nominal one: it is taken half-way. `nut_class` is the property class of a metric
    /// nut, `"8"` or `"10"`.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if no publisher has the thread; [`Error::NoValue`] if none gives both limits for
    /// that kind and class of nut.
    ///
    /// ```
    /// use shankline::parts::Locking;
    /// use shankline::prelude::*;
    /// use shankline::tables::locking::PrevailingTorque;
    /// use shankline::units::pound_force_inches;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let range = PrevailingTorque::range(&"1/2-13 UNC".parse()?, Locking::Insert, None)?;
    /// assert_eq!(range.max, pound_force_inches(204.0)); // ASME B18.16.6
    /// assert!(PrevailingTorque::range(&"M8".parse()?, Locking::Insert, None).is_err());
    /// // ISO 2320: an insert nut may turn half as hard as an all-metal one.
    /// let insert = PrevailingTorque::range(&"M8".parse()?, Locking::Insert, Some("8"))?;
    /// let metal = PrevailingTorque::range(&"M8".parse()?, Locking::AllMetal, Some("8"))?;
    /// assert_eq!((insert.max, metal.max), (newton_metres(3.0), newton_metres(6.0)));
    /// # Ok(())
    /// # }
    /// ```
    pub fn range(
        thread: &Thread,
        locking: Locking,
        nut_class: Option<&str>,
    ) -> Result<Spread<Torque>, Error> {
        let rows = Self::for_thread(thread)?;
        let of = |kind: PrevailingTorqueKind| {
            rows.iter().filter(move |row| {
                row.kind == kind
                    && row.locking.is_none_or(|only| only == locking)
                    && row.is_for_class(nut_class)
            })
        };
        for most in of(PrevailingTorqueKind::FirstInstallationMax) {
            let mut removal = of(PrevailingTorqueKind::FirstRemovalMin);
            if let Some(least) = removal.find(|row| row.publisher == most.publisher) {
                return Ok(Spread {
                    min: least.torque,
                    nominal: 0.5 * (least.torque + most.torque),
                    max: most.torque,
                });
            }
        }
        Err(Error::NoValue {
            quantity: "running torque",
            subject: format!("{locking} {thread}"),
            reason: "no publisher gives both limits for that kind and class of nut",
        })
    }

    fn thread_pitch(&self) -> Length {
        match (self.threads_per_inch, self.pitch) {
            (Some(n), _) => crate::units::inches(1.0 / n),
            (None, Some(pitch)) => pitch,
            (None, None) => crate::units::inches(0.0),
        }
    }
}
