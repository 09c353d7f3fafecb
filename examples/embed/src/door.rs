//! The functions of `shankline.h`. All of the unsafe code of the package is here, and nothing but memory is.

// Memory that comes from a caller cannot be checked, only promised.
#![allow(unsafe_code)]

use std::ffi::{CStr, c_char};
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::{ptr, slice};

use crate::{Answers, Cases, INTERFACE, Refusal, answer, sweep};

/// `shankline_answer` of the header: UTF-8 of that length, and a zero after it that does not count.
#[derive(Debug)]
#[repr(C)]
pub struct Text {
    text: *mut u8,
    length: usize,
}

impl Text {
    /// What is in it, without the zero.
    #[must_use]
    pub fn bytes(&self) -> &[u8] {
        // SAFETY: it was made by `give`, and is given back by nobody while it is borrowed.
        unsafe { read(self.text, self.length) }
    }
}

/// There is an answer.
pub const ANSWERED: i32 = 0;
/// There is none; the text is an error document.
pub const REFUSED: i32 = 1;
/// A pointer is null that must not be, or not aligned: nothing was done, and there is no text.
pub const MISUSED: i32 = 2;

/// The number of the interface.
#[unsafe(no_mangle)]
pub extern "C" fn shankline_interface() -> u32 {
    INTERFACE
}

/// Answers a question by its name.
///
/// # Safety
///
/// `question` ends with a zero; `request` has `length` bytes that can be read; `text` can be written. None changes meanwhile.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn shankline_ask(
    question: *const c_char,
    request: *const u8,
    length: usize,
    text: *mut Text,
) -> i32 {
    if question.is_null() || !is_readable(request, length) || !is_there(text) {
        return MISUSED;
    }
    // SAFETY: neither is null, and the caller promises the rest.
    let (question, request) = unsafe { (CStr::from_ptr(question), read(request, length)) };
    let found = guarded(|| answer(&question.to_string_lossy(), request));
    // SAFETY: not null, aligned, and the caller promises that it can be written.
    unsafe { give(found, text) }
}

/// Answers many load cases of a joint. The text is empty, or an error document.
///
/// # Safety
///
/// As for `shankline_ask`; every array has `count` numbers, and those of the answers overlap nothing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn shankline_sweep(
    request: *const u8,
    length: usize,
    count: usize,
    across: *const f64,
    along: *const f64,
    across_least: *const f64,
    along_least: *const f64,
    words: *mut u8,
    modes: *mut u8,
    utilisations: *mut f64,
    text: *mut Text,
) -> i32 {
    let columns = [across, along]
        .iter()
        .all(|&column| is_readable(column, count));
    let least = [across_least, along_least]
        .iter()
        .all(|&own| own.is_null() || is_readable(own, count));
    let room =
        is_readable(words, count) && is_readable(modes, count) && is_readable(utilisations, count);
    if !is_readable(request, length) || !columns || !least || !room || !is_there(text) {
        return MISUSED;
    }
    // SAFETY: only null where `None` stands for it or `count` is 0, aligned, and the caller promises the rest.
    let (request, cases, answers) = unsafe {
        let column = |at: *const f64| (!at.is_null()).then(|| read(at, count));
        let cases = Cases {
            across: read(across, count),
            along: read(along, count),
            across_least: column(across_least),
            along_least: column(along_least),
        };
        let answers = Answers {
            words: written(words, count),
            modes: written(modes, count),
            utilisations: written(utilisations, count),
        };
        (read(request, length), cases, answers)
    };
    let found = guarded(|| sweep(request, cases, answers).map(|()| Vec::new()));
    // SAFETY: not null, aligned, and the caller promises that it can be written.
    unsafe { give(found, text) }
}

/// Gives the text back; it is empty afterwards, and may be given back again.
///
/// # Safety
///
/// `text` is null, or was filled by a function above or with zeros, and nobody reads it any more.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn shankline_free(text: *mut Text) {
    if is_there(text) {
        // SAFETY: not null, aligned, and what is in it was made by `give`, with a zero at the end.
        unsafe {
            let Text { text: at, length } = text.replace(Text {
                text: ptr::null_mut(),
                length: 0,
            });
            if !at.is_null() {
                drop(Box::from_raw(ptr::slice_from_raw_parts_mut(at, length + 1)));
            }
        }
    }
}

/// A page has no memory of its own that the module can read: room in the module for numbers and text, aligned for `f64`.
#[cfg(target_arch = "wasm32")]
#[unsafe(no_mangle)]
pub extern "C" fn shankline_room(bytes: usize) -> *mut u64 {
    Box::into_raw(vec![0_u64; bytes.div_ceil(8)].into_boxed_slice()).cast()
}

/// Gives room back.
///
/// # Safety
///
/// It was given for as many bytes by `shankline_room`, and once.
#[cfg(target_arch = "wasm32")]
#[unsafe(no_mangle)]
pub unsafe extern "C" fn shankline_clear(at: *mut u64, bytes: usize) {
    // SAFETY: promised by the caller.
    drop(unsafe { Box::from_raw(ptr::slice_from_raw_parts_mut(at, bytes.div_ceil(8))) });
}

fn is_there<T>(at: *const T) -> bool {
    !at.is_null() && at.is_aligned()
}

fn is_readable<T>(at: *const T, count: usize) -> bool {
    let sane = count
        .checked_mul(size_of::<T>())
        .is_some_and(|bytes| isize::try_from(bytes).is_ok());
    count == 0 || (is_there(at) && sane)
}

/// # Safety
///
/// `is_readable`, and really there.
unsafe fn read<'a, T>(at: *const T, count: usize) -> &'a [T] {
    // SAFETY: promised by the caller.
    if count == 0 {
        &[]
    } else {
        unsafe { slice::from_raw_parts(at, count) }
    }
}

/// # Safety
///
/// As for `read`, and nothing else reads or writes it.
unsafe fn written<'a, T>(at: *mut T, count: usize) -> &'a mut [T] {
    // SAFETY: promised by the caller.
    if count == 0 {
        &mut []
    } else {
        unsafe { slice::from_raw_parts_mut(at, count) }
    }
}

/// A panic must not run into code of another language. In a browser there is none: it ends the module.
fn guarded(asked: impl FnOnce() -> Result<Vec<u8>, Refusal>) -> Result<Vec<u8>, Refusal> {
    catch_unwind(AssertUnwindSafe(asked)).unwrap_or_else(|_| Err(Refusal::internal()))
}

/// # Safety
///
/// `text` can be written.
unsafe fn give(found: Result<Vec<u8>, Refusal>, text: *mut Text) -> i32 {
    let (status, mut bytes) = match found {
        Ok(answer) => (ANSWERED, answer),
        Err(refusal) => (REFUSED, refusal.document()),
    };
    let length = bytes.len();
    bytes.push(0);
    let at = Box::into_raw(bytes.into_boxed_slice()).cast();
    // SAFETY: promised by the caller. What was there before is not read: it may be anything.
    unsafe { text.write(Text { text: at, length }) };
    status
}
