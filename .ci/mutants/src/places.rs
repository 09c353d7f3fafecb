//! Where a file can be changed, and the text that holds every change behind a switch.

use proc_macro2::Span;
use std::ops::Range;
use syn::spanned::Spanned;
use syn::visit::{self, Visit};

/// One small change.
#[derive(Debug, Clone)]
pub struct Mutant {
    /// Line in the file as it is.
    pub line: usize,
    /// Path of the function in the file.
    pub function: String,
    /// What is done: `a < b: < to <=`.
    pub change: String,
    /// Place of the whole expression in the file: changes of one place stand and fall together where they do not compile.
    pub place: Range<usize>,
}

/// Text put in at a place of the file. Of several at one place those that close come first, the inner ones first; then
/// those that open, the outer ones first.
struct Edit {
    at: usize,
    opens: bool,
    /// How much the expression covers.
    covers: usize,
    text: String,
    /// How much of the file it stands for.
    replaces: usize,
}

/// A file with its changes, none of which is switched on.
#[derive(Default)]
pub struct File {
    pub mutants: Vec<Mutant>,
    pub text: String,
    /// Where each change stands in `text`.
    pub changed: Vec<Range<usize>>,
    /// Where the expressions of each change stand in `text`.
    pub around: Vec<Range<usize>>,
}

/// Begin and end of the text of a change in what is written first; both are taken out again.
const OPEN: char = '\u{1}';
const CLOSE: char = '\u{2}';
const MID: char = '\u{3}';

/// Every change of `source`, but for those that `skip` names; numbers begin at `first`.
pub fn of(source: &str, first: usize, skip: &dyn Fn(&Mutant) -> bool) -> Result<File, String> {
    let parsed = syn::parse_file(source).map_err(|error| error.to_string())?;
    let mut finder = Finder {
        source,
        lines: lines(source),
        first,
        skip,
        function: Vec::new(),
        mutants: Vec::new(),
        edits: Vec::new(),
    };
    finder.visit_file(&parsed);
    let Finder {
        mutants, mut edits, ..
    } = finder;
    edits.sort_by(|a, b| {
        (a.at, a.opens).cmp(&(b.at, b.opens)).then(if a.opens {
            b.covers.cmp(&a.covers)
        } else {
            a.covers.cmp(&b.covers)
        })
    });
    let mut marked = String::new();
    let mut at = 0;
    for edit in edits {
        marked.push_str(&source[at..edit.at]);
        marked.push_str(&edit.text);
        at = edit.at + edit.replaces;
    }
    marked.push_str(&source[at..]);
    Ok(unmark(&marked, mutants, first))
}

/// Takes the marks out, and notes where they stood.
fn unmark(marked: &str, mutants: Vec<Mutant>, first: usize) -> File {
    let mut file = File {
        changed: vec![0..0; mutants.len()],
        around: vec![0..0; mutants.len()],
        mutants,
        ..File::default()
    };
    let mut open: Vec<(bool, usize)> = Vec::new();
    let mut rest = marked;
    while let Some(i) = rest.find([OPEN, CLOSE]) {
        file.text.push_str(&rest[..i]);
        let opens = rest[i..].starts_with(OPEN);
        rest = &rest[i + 1..];
        let end = rest.find(MID).unwrap_or(0);
        let (outer, number) = (
            rest.starts_with('w'),
            rest[..end]
                .trim_start_matches('w')
                .parse::<usize>()
                .unwrap_or(0),
        );
        rest = &rest[end + 1..];
        let ranges = if outer {
            &mut file.around
        } else {
            &mut file.changed
        };
        if opens {
            ranges[number - first].start = file.text.len();
            open.push((outer, number));
        } else {
            ranges[number - first].end = file.text.len();
            open.retain(|&one| one != (outer, number));
        }
    }
    file.text.push_str(rest);
    file
}

fn lines(source: &str) -> Vec<usize> {
    core::iter::once(0)
        .chain(source.match_indices('\n').map(|(i, _)| i + 1))
        .collect()
}

struct Finder<'a> {
    source: &'a str,
    lines: Vec<usize>,
    first: usize,
    skip: &'a dyn Fn(&Mutant) -> bool,
    function: Vec<String>,
    mutants: Vec<Mutant>,
    edits: Vec<Edit>,
}

impl Finder<'_> {
    fn range(&self, span: Span) -> Range<usize> {
        let place = |at: proc_macro2::LineColumn| {
            let line = self.lines[at.line - 1];
            line + self.source[line..]
                .char_indices()
                .nth(at.column)
                .map_or(self.source.len() - line, |(i, _)| i)
        };
        place(span.start())..place(span.end())
    }

    /// The numbers of those changes of a place that are not skipped, with what they put there.
    fn note(
        &mut self,
        place: &Range<usize>,
        line: usize,
        changes: &[(String, String)],
    ) -> Vec<(usize, String)> {
        let mut noted = Vec::new();
        for (change, code) in changes {
            let mutant = Mutant {
                line,
                function: self.function.join("::"),
                change: change.clone(),
                place: place.clone(),
            };
            // The same change of the same words again in one function is told apart by its count.
            let again = self
                .mutants
                .iter()
                .filter(|m| m.function == mutant.function && m.change.starts_with(change.as_str()))
                .count();
            let mutant = Mutant {
                change: if again == 0 {
                    change.clone()
                } else {
                    format!("{change} #{}", again + 1)
                },
                ..mutant
            };
            let number = self.first + self.mutants.len();
            // What is skipped keeps its number, so that the others keep theirs.
            if !(self.skip)(&mutant) {
                noted.push((number, code.clone()));
            }
            self.mutants.push(mutant);
        }
        noted
    }

    fn put(&mut self, at: usize, opens: bool, covers: usize, text: String) {
        self.edits.push(Edit {
            at,
            opens,
            covers,
            text,
            replaces: 0,
        });
    }

    fn words(&self, range: &Range<usize>) -> String {
        let words: Vec<&str> = self.source[range.clone()].split_whitespace().collect();
        let words = words.join(" ");
        if words.chars().count() > 70 {
            words.chars().take(70).chain("..".chars()).collect()
        } else {
            words
        }
    }

    /// The beginning and end that say where all of a place stands in the text.
    fn outer(noted: &[(usize, String)]) -> (String, String) {
        let mark = |sign: char| {
            noted
                .iter()
                .map(|(n, _)| format!("{sign}w{n}{MID}"))
                .collect::<String>()
        };
        (mark(OPEN), mark(CLOSE))
    }

    /// `if on(1) { changed } else if on(2) { .. } else {`, before what is plain.
    fn before_plain(noted: &[(usize, String)]) -> String {
        let mut text = String::new();
        for (n, code) in noted {
            text.push_str(&format!(
                "if crate::mutant::on({n}) {{ {OPEN}{n}{MID}{code}{CLOSE}{n}{MID} }} else "
            ));
        }
        text + "{ "
    }

    fn branches(noted: &[(usize, String)], plain: &str) -> String {
        format!("{}{plain} }}", Self::before_plain(noted))
    }

    fn binary(&mut self, node: &syn::ExprBinary) {
        use syn::BinOp as B;
        let sign = self.source[self.range(node.op.span())].to_owned();
        let others: &[&str] = match node.op {
            B::Eq(_) => &["!="],
            B::Ne(_) => &["=="],
            B::Lt(_) => &["==", ">", "<="],
            B::Gt(_) => &["==", "<", ">="],
            B::Le(_) => &[">", "<"],
            B::Ge(_) => &["<", ">"],
            B::And(_) => &["||"],
            B::Or(_) => &["&&"],
            B::Add(_) => &["-", "*"],
            B::Sub(_) => &["+", "/"],
            B::Mul(_) => &["+", "/"],
            B::Div(_) => &["*", "%"],
            B::Rem(_) => &["/", "+"],
            B::BitAnd(_) => &["|"],
            B::BitOr(_) | B::BitXor(_) => &["&"],
            B::Shl(_) => &[">>"],
            B::Shr(_) => &["<<"],
            B::AddAssign(_) => &["-=", "*="],
            B::SubAssign(_) => &["+=", "/="],
            B::MulAssign(_) => &["+=", "/="],
            B::DivAssign(_) => &["*=", "%="],
            B::BitOrAssign(_) => &["&="],
            B::BitAndAssign(_) => &["|="],
            _ => return,
        };
        let whole = self.range(node.span());
        let (left, right) = (self.range(node.left.span()), self.range(node.right.span()));
        let line = node.op.span().start().line;
        let words = self.words(&whole);
        let changes: Vec<(String, String)> = others
            .iter()
            .map(|other| {
                (
                    format!("{words}: {sign} to {other}"),
                    format!("mutant_l {other} mutant_r"),
                )
            })
            .collect();
        let covers = whole.len();
        if assigns(&node.op) {
            // The place on the left is written once more: it is a name or a field.
            let (l, r) = (
                self.source[left.clone()].to_owned(),
                self.source[right.clone()].to_owned(),
            );
            let changes: Vec<(String, String)> = others
                .iter()
                .map(|other| {
                    (
                        format!("{words}: {sign} to {other}"),
                        format!("{l} {other} {r}"),
                    )
                })
                .collect();
            let noted = self.note(&whole, line, &changes);
            if noted.is_empty() {
                return;
            }
            let (open, close) = Self::outer(&noted);
            let all = Self::before_plain(&noted);
            self.put(whole.start, true, covers, format!("{open}{all}"));
            self.put(whole.end, false, covers, format!(" }}{close}"));
            return;
        }
        let noted = self.note(&whole, line, &changes);
        if noted.is_empty() {
            return;
        }
        let (open, close) = Self::outer(&noted);
        let between = left.end..right.start;
        if sign == "&&" || sign == "||" {
            let (n, _) = noted[0];
            let test = if sign == "&&" { "!=" } else { "==" };
            self.put(
                whole.start,
                true,
                covers,
                format!("{open}{OPEN}{n}{MID}{CLOSE}{n}{MID}(match ("),
            );
            self.edits.push(Edit {
                at: between.start,
                opens: true,
                covers: 0,
                text: format!(") {{ mutant_l => if mutant_l {test} crate::mutant::on({n}) {{ "),
                replaces: between.len(),
            });
            self.put(
                whole.end,
                false,
                covers,
                format!(" }} else {{ mutant_l }} }}){close}"),
            );
            return;
        }
        let by = if matches!(sign.as_str(), "==" | "!=" | "<" | ">" | "<=" | ">=") {
            "&"
        } else {
            ""
        };
        self.put(whole.start, true, covers, format!("{open}(match ({by}("));
        self.edits.push(Edit {
            at: between.start,
            opens: true,
            covers: 0,
            text: format!("), {by}("),
            replaces: between.len(),
        });
        let branches = Self::branches(&noted, &format!("mutant_l {sign} mutant_r"));
        self.put(
            whole.end,
            false,
            covers,
            format!(")) {{ (mutant_l, mutant_r) => {branches} }}){close}"),
        );
    }

    fn unary(&mut self, node: &syn::ExprUnary) {
        let sign = match node.op {
            syn::UnOp::Not(_) => "!",
            syn::UnOp::Neg(_) => "-",
            _ => return,
        };
        let (whole, inner) = (self.range(node.span()), self.range(node.expr.span()));
        let words = self.words(&whole);
        let noted = self.note(
            &whole,
            node.span().start().line,
            &[(format!("{words}: no {sign}"), "mutant_v".into())],
        );
        if noted.is_empty() {
            return;
        }
        let (open, close) = Self::outer(&noted);
        let branches = Self::branches(&noted, &format!("{sign}mutant_v"));
        self.edits.push(Edit {
            at: whole.start,
            opens: true,
            covers: whole.len(),
            text: format!("{open}(match ("),
            replaces: inner.start - whole.start,
        });
        self.put(
            whole.end,
            false,
            whole.len(),
            format!(") {{ mutant_v => {branches} }}){close}"),
        );
    }

    fn arms(&mut self, node: &syn::ExprMatch) {
        let has_rest = node
            .arms
            .iter()
            .any(|arm| matches!(arm.pat, syn::Pat::Wild(_)) && arm.guard.is_none());
        for arm in &node.arms {
            let pattern = self.range(arm.pat.span());
            let words = self.words(&pattern);
            let line = arm.span().start().line;
            if let Some((_, guard)) = &arm.guard {
                let place = self.range(guard.span());
                let words = self.words(&place);
                let changes = [
                    (format!("guard {words}: true"), "true".into()),
                    (format!("guard {words}: false"), "false".into()),
                ];
                let noted = self.note(&place, line, &changes);
                if !noted.is_empty() {
                    let (open, close) = Self::outer(&noted);
                    let branches = Self::before_plain(&noted);
                    // It covers more than the guard itself, which may be an expression with changes of its own.
                    self.put(
                        place.start,
                        true,
                        place.len() + 1,
                        format!("{open}({branches}"),
                    );
                    self.put(place.end, false, place.len() + 1, format!(" }}){close}"));
                }
            } else if has_rest && !matches!(arm.pat, syn::Pat::Wild(_)) {
                let noted = self.note(
                    &pattern,
                    line,
                    &[(format!("arm {words}: left out"), String::new())],
                );
                if let [(n, _)] = noted.as_slice() {
                    let (open, close) = Self::outer(&noted);
                    self.put(
                        pattern.end,
                        false,
                        pattern.len() + 1,
                        format!(
                            " if {open}{OPEN}{n}{MID}!crate::mutant::on({n}){CLOSE}{n}{MID}{close}"
                        ),
                    );
                }
            }
        }
    }

    /// The changes of a function: what it gives, and what is in it.
    fn of(&mut self, signature: &syn::Signature, block: &syn::Block) {
        self.function.push(signature.ident.to_string());
        self.body(signature, block);
        visit::visit_block(self, block);
        self.function.pop();
    }

    fn body(&mut self, signature: &syn::Signature, block: &syn::Block) {
        if block.stmts.is_empty() {
            return;
        }
        let values = match &signature.output {
            syn::ReturnType::Default => vec!["()".to_owned()],
            syn::ReturnType::Type(_, of) => values(of),
        };
        let place = self.range(block.span());
        let plain = self.words(&(place.start + 1..place.end - 1));
        let changes: Vec<(String, String)> = values
            .into_iter()
            .filter(|value| plain != *value)
            .map(|value| {
                (
                    format!("{}() to {value}", signature.ident),
                    format!("return {value};"),
                )
            })
            .collect();
        let noted = self.note(&place, signature.span().start().line, &changes);
        if noted.is_empty() {
            return;
        }
        let (open, close) = Self::outer(&noted);
        let mut text = open;
        for (n, code) in &noted {
            text.push_str(&format!(
                " if crate::mutant::on({n}) {{ {OPEN}{n}{MID}{code}{CLOSE}{n}{MID} }}"
            ));
        }
        text.push_str(&close);
        self.put(place.start + 1, false, 0, text);
    }
}

/// What a function of this type may give in place of what it computes.
fn values(of: &syn::Type) -> Vec<String> {
    let own = |words: &[&str]| words.iter().map(|&w| w.to_owned()).collect::<Vec<_>>();
    match of {
        syn::Type::Tuple(all) if all.elems.is_empty() => own(&["()"]),
        syn::Type::Reference(inner) => match &*inner.elem {
            syn::Type::Path(path) if path.path.is_ident("str") => own(&["\"\"", "\"xyzzy\""]),
            syn::Type::Slice(_) => own(&["&[]"]),
            _ => Vec::new(),
        },
        syn::Type::Path(path) => {
            let Some(last) = path.path.segments.last() else {
                return Vec::new();
            };
            let inner = match &last.arguments {
                syn::PathArguments::AngleBracketed(all) => {
                    all.args.iter().find_map(|one| match one {
                        syn::GenericArgument::Type(of) => Some(values(of)),
                        _ => None,
                    })
                }
                _ => None,
            };
            let wrap = |name: &str| {
                inner
                    .clone()
                    .unwrap_or_default()
                    .iter()
                    .map(|v| format!("{name}({v})"))
                    .collect::<Vec<_>>()
            };
            match last.ident.to_string().as_str() {
                "bool" => own(&["true", "false"]),
                "f64" | "f32" => own(&["0.0", "1.0", "-1.0"]),
                "u8" | "u16" | "u32" | "u64" | "u128" | "usize" => own(&["0", "1"]),
                "i8" | "i16" | "i32" | "i64" | "i128" | "isize" => own(&["0", "1", "-1"]),
                "String" => own(&["alloc::string::String::new()", "\"xyzzy\".into()"]),
                "Vec" => own(&["alloc::vec::Vec::new()"]),
                "Option" => core::iter::once("None".to_owned())
                    .chain(wrap("Some"))
                    .collect(),
                "Result" => wrap("Ok"),
                _ => own(&["Default::default()"]),
            }
        }
        _ => Vec::new(),
    }
}

/// Whether the left side is a place that is changed, not a value.
fn assigns(op: &syn::BinOp) -> bool {
    use syn::BinOp as B;
    matches!(
        op,
        B::AddAssign(_)
            | B::SubAssign(_)
            | B::MulAssign(_)
            | B::DivAssign(_)
            | B::BitOrAssign(_)
            | B::BitAndAssign(_)
    )
}

fn is_test(attributes: &[syn::Attribute]) -> bool {
    attributes.iter().any(|attribute| {
        attribute.path().is_ident("test")
            || matches!(&attribute.meta, syn::Meta::List(list) if attribute.path().is_ident("cfg") && list.tokens.to_string().contains("test"))
    })
}

impl<'ast> Visit<'ast> for Finder<'_> {
    fn visit_item_mod(&mut self, node: &'ast syn::ItemMod) {
        if !is_test(&node.attrs) {
            visit::visit_item_mod(self, node);
        }
    }
    fn visit_item_fn(&mut self, node: &'ast syn::ItemFn) {
        if is_test(&node.attrs) || node.sig.constness.is_some() {
            return;
        }
        self.of(&node.sig, &node.block);
    }
    fn visit_item_impl(&mut self, node: &'ast syn::ItemImpl) {
        if is_test(&node.attrs) {
            return;
        }
        let name = self.words(&self.range(node.self_ty.span()));
        let name = node.trait_.as_ref().map_or(name.clone(), |(_, path, _)| {
            format!("{} for {name}", self.words(&self.range(path.span())))
        });
        self.function.push(name);
        visit::visit_item_impl(self, node);
        self.function.pop();
    }
    fn visit_impl_item_fn(&mut self, node: &'ast syn::ImplItemFn) {
        if is_test(&node.attrs) || node.sig.constness.is_some() {
            return;
        }
        self.of(&node.sig, &node.block);
    }
    fn visit_trait_item_fn(&mut self, node: &'ast syn::TraitItemFn) {
        if let Some(block) = &node.default {
            self.of(&node.sig, block);
        }
    }
    fn visit_item_const(&mut self, _: &'ast syn::ItemConst) {}
    fn visit_item_static(&mut self, _: &'ast syn::ItemStatic) {}
    fn visit_impl_item_const(&mut self, _: &'ast syn::ImplItemConst) {}
    fn visit_item_macro(&mut self, _: &'ast syn::ItemMacro) {}
    fn visit_type(&mut self, _: &'ast syn::Type) {}
    fn visit_pat(&mut self, _: &'ast syn::Pat) {}
    fn visit_attribute(&mut self, _: &'ast syn::Attribute) {}
    fn visit_expr_const(&mut self, _: &'ast syn::ExprConst) {}
    fn visit_expr_repeat(&mut self, node: &'ast syn::ExprRepeat) {
        self.visit_expr(&node.expr);
    }
    fn visit_expr_binary(&mut self, node: &'ast syn::ExprBinary) {
        self.binary(node);
        if assigns(&node.op) {
            // The left side is a place, not a value.
            self.visit_expr(&node.right);
        } else {
            visit::visit_expr_binary(self, node);
        }
    }
    fn visit_expr_unary(&mut self, node: &'ast syn::ExprUnary) {
        self.unary(node);
        visit::visit_expr_unary(self, node);
    }
    fn visit_expr_match(&mut self, node: &'ast syn::ExprMatch) {
        self.arms(node);
        visit::visit_expr_match(self, node);
    }
}
