/*
 * A door to shankline: checks and chooses the bolt of a joint. C99 and C++.
 *
 * A question is a name, a request a JSON object, an answer a JSON document (a picture or a text where one is asked for).
 * README.md beside this file lists the questions and what each request has in it.
 *
 * Memory: what you pass in is yours, is only read, and is not kept; it stays as it is during the call. What comes out in a
 * shankline_answer belongs to the library: read it, and give it back once with shankline_free from any thread. Never
 * pass it to free(). The arrays of shankline_sweep are yours.
 *
 * Threads: every function may be called from any thread at any time. Nothing is kept between calls, so there is nothing to
 * open, to close or to lock.
 *
 * Faults: a panic of the library is caught and comes back as SHANKLINE_REFUSED with the code "internal". Only where memory
 * runs out is the process ended.
 *
 * Results are estimates, not a certification: local codes and the maker's instructions rule, and where a failure can hurt
 * someone a licensed engineer must check the joint. "undecided" and an error are never "holds".
 */
#ifndef SHANKLINE_H
#define SHANKLINE_H

#include <stddef.h>
#include <stdint.h>

#ifdef __cplusplus
extern "C" {
#endif

/*
 * Compare with shankline_interface() before anything else. It rises when a function, a struct, the name of a question or
 * the meaning of a field in a request changes or goes, and stays when something is added.
 */
#define SHANKLINE_INTERFACE 1u

/* What the functions return. */
#define SHANKLINE_ANSWERED 0 /* there is an answer */
#define SHANKLINE_REFUSED 1  /* there is none: the text is an error document with `code`, `text` and `place` */
#define SHANKLINE_MISUSED 2  /* a pointer is null that must not be, or not aligned: nothing was done, there is no text */

/* UTF-8, `length` bytes long, and after them a zero that does not count. */
typedef struct shankline_answer {
    char *text;
    size_t length;
} shankline_answer;

/* The interface of the library that is loaded. */
uint32_t shankline_interface(void);

/*
 * Answers a question: "verdict", "check", "lengths", "design", "explain", "draw", "assembly", "check_connection",
 * "draw_connection", "catalogue", "tables", "schema" or "version". The request is UTF-8 and need not end with a zero.
 * `answer` is overwritten without being read: give back what was in it first.
 */
int32_t shankline_ask(const char *question, const char *request, size_t length, shankline_answer *answer);

/* The words of shankline_sweep. */
#define SHANKLINE_UNDECIDED 0
#define SHANKLINE_HOLDS 1
#define SHANKLINE_DOES_NOT_HOLD 2

/* The mode of a load case in which nothing was compared. */
#define SHANKLINE_NO_MODE 255

/*
 * Many load cases of one joint, as numbers. The request is {"joint": ...}, whose loads do not count, but shock factor, load
 * factor, prying and cycles do.
 *
 * In, `count` numbers each, in newtons: the greatest load across the axis (not negative) and along it (below zero where it
 * presses the plies together), and the least of each. A null pointer for the least says that this load is steady: a load that
 * comes and goes tires the bolt, and must be told.
 *
 * Out, room for `count` numbers each, which overlaps nothing: the word; the mode of the highest utilisation, by its place in
 * the list `families.modes` of "catalogue"; the highest utilisation.
 *
 * A case that makes no sense (not a number, a least above the greatest) is refused, with `place.case` counted from 0; it
 * and those after it are undecided. The text of an answer is empty; give it back all the same.
 */
int32_t shankline_sweep(const char *request, size_t length, size_t count,
                        const double *across, const double *along,
                        const double *across_least, const double *along_least,
                        uint8_t *words, uint8_t *modes, double *utilisations,
                        shankline_answer *answer);

/* Gives an answer back and empties it. An empty one, or null, is let pass. */
void shankline_free(shankline_answer *answer);

#ifdef __cplusplus
}
#endif

#endif
