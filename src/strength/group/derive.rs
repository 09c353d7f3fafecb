//! The working behind the results of groups.
