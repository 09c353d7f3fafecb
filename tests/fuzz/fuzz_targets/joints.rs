#![no_main]

libfuzzer_sys::fuzz_target!(|input: &[u8]| shankline_fuzz::must_pass("joints", input));
