//! A page as SVG.

use alloc::string::String;

use super::canvas::Drawing;
use super::kinds::Anchor;
use super::number::push_number;
use super::text::push_escaped;

impl Drawing {
    /// The page as an SVG document: the same text on every machine, with its colours for light and dark surroundings in
    /// it, and without anything that is loaded from elsewhere.
    ///
    /// ```
    /// # use shankline::drawing::Drawing;
    /// let svg = Drawing::new(300.0, "A <title>", "").svg();
    /// assert!(svg.starts_with("<svg xmlns=") && svg.ends_with("</svg>\n"));
    /// assert!(svg.contains("<title>A &lt;title&gt;</title>"));
    /// ```
    #[must_use]
    pub fn svg(&self) -> String {
        let texts = self.labels.iter().map(|label| label.text.len() + 64);
        let mut svg =
            String::with_capacity(self.body.len() + texts.sum::<usize>() + STYLE.len() + 2048);
        svg.push_str("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 ");
        push_number(&mut svg, self.width);
        svg.push(' ');
        push_number(&mut svg, self.height);
        for (name, value) in [("\" width=\"", self.width), ("\" height=\"", self.height)] {
            svg.push_str(name);
            push_number(&mut svg, value);
        }
        svg.push_str("\" role=\"img\">\n<title>");
        push_escaped(&mut svg, &self.title);
        svg.push_str("</title>\n<desc>");
        push_escaped(&mut svg, &self.description);
        svg.push_str("</desc>\n<style>");
        svg.push_str(STYLE);
        svg.push_str("</style>\n<path class=\"W\" d=\"M0 0H");
        push_number(&mut svg, self.width);
        svg.push('V');
        push_number(&mut svg, self.height);
        svg.push_str("H0Z\"/>\n");
        svg.push_str(&self.body);
        for label in self.labels.iter().filter(|label| label.on_lines) {
            let [left, top, right, bottom] = label.bounds();
            svg.push_str("<path class=\"W\" d=\"M");
            push_number(&mut svg, left);
            svg.push(' ');
            push_number(&mut svg, top);
            for (step, value) in [('H', right), ('V', bottom), ('H', left)] {
                svg.push(step);
                push_number(&mut svg, value);
            }
            svg.push_str("Z\"/>\n");
        }
        for label in &self.labels {
            svg.push_str("<text class=\"");
            svg.push_str(label.style.class());
            svg.push_str(match label.anchor {
                Anchor::Start => "\"",
                Anchor::Middle => " m\"",
                Anchor::End => " e\"",
            });
            for (name, value) in [(" x=\"", label.at[0]), (" y=\"", label.at[1])] {
                svg.push_str(name);
                push_number(&mut svg, value);
                svg.push('"');
            }
            svg.push('>');
            push_escaped(&mut svg, &label.text);
            svg.push_str("</text>\n");
        }
        svg.push_str("</svg>\n");
        svg
    }
}

/// The style of every picture. The colours are those of Okabe and Ito, which colour-blind people tell apart; for each
/// there is a pattern, a shape or a word beside.
const STYLE: &str = "path,circle{fill:none;stroke-linejoin:round}\
text{font-family:'DejaVu Sans',Verdana,Arial,sans-serif;fill:#111}\
.H{font-size:16px;font-weight:bold}.S{font-size:12px;font-weight:bold}.T{font-size:12px}.N{font-size:11px}\
.m{text-anchor:middle}.e{text-anchor:end}\
.o,.t,.h,.c,.r,.u{stroke:#111}.o{stroke-width:1.8}.t,.h,.c,.r{stroke-width:.8}\
.h{stroke-dasharray:5 2.5}.c{stroke-dasharray:16 3 2 3}.r{stroke-dasharray:14 3 2 3 2 3}.u{stroke-width:1.8;stroke-dasharray:1.8 3}\
.p{stroke:#D55E00;stroke-width:1.8;stroke-dasharray:8 3}.x{stroke:#777;stroke-width:.7}\
.f{stroke:#0072B2;stroke-width:2.4}.s{stroke:#D55E00;stroke-width:2.4;stroke-dasharray:9 4}\
.W{fill:#fff}.I{fill:#111}.A{fill:#0072B2}.B{fill:#F6D68B}.C{fill:#BFE3F7}.D{fill:#999;fill-opacity:.45}.E{fill:#D55E00;fill-opacity:.4}\
.R{fill:#e4e4e4}.F{fill:#0072B2}.G{fill:#D55E00}\
@media(prefers-color-scheme:dark){text{fill:#eee}.o,.t,.h,.c,.r,.u{stroke:#eee}.x{stroke:#888}.p,.s{stroke:#FF8C3A}.f{stroke:#56B4E9}\
.W{fill:#161616}.I{fill:#eee}.A{fill:#3D9BD9}.B{fill:#6B5520}.C{fill:#1E4A63}.E{fill:#FF8C3A}.R{fill:#3a3a3a}.F{fill:#3D9BD9}.G{fill:#E8741C}}";
