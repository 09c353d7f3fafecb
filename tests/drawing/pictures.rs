use super::joints::chosen;
use shankline::drawing;
use shankline::prelude::*;

#[test]
fn write() {
    let folder = std::path::Path::new(env!("CARGO_TARGET_TMPDIR")).join("drawing");
    std::fs::create_dir_all(&folder).unwrap();
    for (name, joint) in chosen() {
        let verdict = match joint.check() { Ok(v) => v, Err(e) => { println!("{name}: {e}"); continue; } };
        let system = if joint.bolt.thread.is_unified() { UnitSystem::UsCustomary } else { UnitSystem::Si };
        let assembly = match joint.assembly(&verdict.candidate) { Ok(v) => v, Err(e) => { println!("{name}: ASSEMBLY {e}"); continue; } };
        let write = |end: &str, page: drawing::Drawing| {
            let over = page.overlaps();
            if !over.is_empty() { for [a,b] in &over { println!("{name}_{end}: {:?} {:?} / {:?} {:?}", page.labels()[*a].text, page.labels()[*a].bounds(), page.labels()[*b].text, page.labels()[*b].bounds()); } }
            std::fs::write(folder.join(format!("{name}_{end}.svg")), page.svg()).unwrap();
        };
        write("section", drawing::section(&assembly, Some(&verdict), system));
        write("bars", drawing::utilisation(&joint.title, &verdict, system));
        write("lengths", drawing::lengths(&joint, &joint.lengths().unwrap(), system).unwrap());
        if let Some(page) = drawing::joint_diagram(&joint, &verdict, system) { write("diagram", page); }
        std::fs::write(folder.join(format!("{name}.dxf")), drawing::section_dxf(&assembly, system)).unwrap();
    }
}
