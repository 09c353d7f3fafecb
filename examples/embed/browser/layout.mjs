// The order in which the form shows what the schema has, and what is folded away. A field that is not named here comes after
// those that are, under "More": nothing of the schema can be forgotten.

/** For each object of the schema: what is shown at once. */
export const SHOWN = {
  Joint: ['title', 'bolt', 'nut', 'stack', 'pattern', 'load', 'environment', 'tightening', 'rules', 'methods', 'set_aside'],
  Bolt: ['thread', 'product', 'grade', 'finish', 'length'],
  Nut: ['style', 'grade', 'finish'],
  Stack: ['washers_under_head', 'plies', 'shear_planes', 'washers_under_nut', 'tapped_part'],
  JointPly: ['name', 'thickness', 'material', 'hole', 'end_distance', 'edge_distance', 'width', 'pitch', 'gauge'],
  JointWasher: ['style', 'thickness'],
  NutWashers: ['count', 'style', 'thickness'],
  TappedPart: ['name', 'engagement', 'hole', 'material', 'lock'],
  JointLoad: ['across', 'along', 'repeats', 'shock_factor', 'prying', 'load_factor'],
  Environment: ['coldest', 'hottest', 'exposure', 'vibration', 'rotates', 'dangerous_if_lost', 'refits'],
  TorqueTightening: ['nut_factor', 'target', 'relaxation', 'settling', 'stiffness'],
  NutFactor: ['min', 'nominal', 'max'],
  JointMethods: ['level', 'margin', 'shear', 'tension', 'interaction', 'plies', 'slip', 'timber'],
  LengthRules: ['protrusion_min_pitches', 'protrusion_max_pitches', 'clear_threads_min', 'washers_under_nut_max', 'washers_under_head_max', 'cut'],
  Connection: ['title', 'bolts', 'cases', 'combinations', 'alternations', 'in_plane', 'out_of_plane', 'loaded', 'plates', 'prying', 'joint'],
  GroupBolt: ['x', 'y'],
  LoadCase: ['name', 'force_x', 'force_y', 'force_z', 'x', 'y', 'z', 'moment_x', 'moment_y', 'moment_z'],
  Combination: ['name', 'parts'],
  Part: ['case', 'factor'],
  Alternation: ['from', 'to', 'cycles'],
  Plate: ['ply', 'outline', 'held', 'footprint'],
  CutRule: ['allowed', 'tolerance', 'step'],
};

/** Names that read better than those of the schema; with the object they belong to where the bare name means something else too. */
export const LABELS = {
  stack: 'Stack, from the head', environment: 'Surroundings', load: 'Loads of one bolt', set_aside: 'Set aside',
  rules: 'Rules for the length', methods: 'Methods', pattern: 'Bolts together', 'JointLoad.across': 'Across the axis', 'JointLoad.along': 'Along the axis',
  x: 'x', y: 'y', z: 'z', min: 'Least', max: 'Greatest', joint: 'One of its bolts', cases: 'Load cases', bolts: 'Where the bolts stand', in_plane: 'Loads in the plane', out_of_plane: 'Moments out of the plane',
  loaded: 'Ply that is loaded', plates: 'Outlines of plies', 'PlatePrying.ply': 'Flange that bends', alternations: 'Loads that alternate',
};

/** Which list of the catalogue has the labels of an enumeration. */
export const FAMILIES = {
  ScrewProduct: 'products', BoltGrade: 'bolt_grades', NutStyle: 'nut_styles', NutGrade: 'nut_grades', WasherStyle: 'washer_styles',
  Metal: 'metals', JointMaterial: 'materials', JointTimber: 'timbers', RuleSet: 'rules', Mode: 'modes', Level: 'levels',
};

/** The enumerations of which a thread, and of which a choice, has only some. */
export const DEPEND_ON = {
  Thread: ['ScrewProduct', 'BoltGrade', 'NutStyle', 'NutGrade', 'WasherStyle'], ScrewProduct: ['BoltGrade'], NutStyle: ['NutGrade'],
};

/** What fits the thread of a joint: the codes that the catalogue gives for it. */
export function fitting(from, fits, joint) {
  const gradesOf = (list, code) => list.find(one => one.code === code)?.grades;
  switch (fits && from) {
    case 'ScrewProduct': return fits.products;
    case 'NutStyle': return fits.nuts;
    case 'WasherStyle': return fits.washers;
    case 'BoltGrade': return gradesOf(fits.products, joint?.bolt?.product);
    case 'NutGrade': return gradesOf(fits.nuts, joint?.nut?.style);
    default: return undefined;
  }
}

/** The field in which a fact is said that a verdict wants, where it is not simply the field of that name. */
const SAID_IN = {
  load: ['load', 'across'], yield_strength: 'material', tensile_strength: 'material', shear_ratio: 'material', surface_pressure: 'material',
  expansion: 'material', slot_length: 'slot', distance: 'end_distance', timber_method: ['methods', 'timber'], timber: 'timber',
  proof_stress: ['bolt', 'grade'], head_height: ['bolt', 'product'], bolt_finish: ['bolt', 'finish'], nut_finish: ['nut', 'finish'],
  nut_grade: ['nut', 'grade'], nut_proof: ['nut', 'style'], screw_lock: ['stack', 'tapped_part', 'lock'], tapped_hole: ['stack', 'tapped_part', 'hole'],
  shear_planes: ['stack', 'shear_planes'], prying: ['load', 'prying'], load_factor: ['load', 'load_factor'], tightening: ['tightening'],
  controlled_preload: ['tightening'], relaxation: ['tightening', 'torque', 'relaxation'], stiffness: ['tightening', 'torque', 'stiffness'],
};
const WASHERS = new Set(['washer', 'washer_hardness', 'hardened_washer', 'verified_washer', 'washer_metal']);

/** What a plate of a connection says of its ply. */
const SAID_OF_PLATE = { held_side: 'held', outline: 'outline', footprint: 'footprint', buckling_length: 'buckling_length', grain_angle: 'grain' };

/** Where a line of `missing` is answered: a path in a joint, or nothing. */
function saidInJoint({ code, place }) {
  if (WASHERS.has(code)) return ['stack', place === 'nut' ? 'washers_under_nut' : 'washers_under_head'];
  const field = SAID_IN[code] ?? code;
  if (Array.isArray(field)) return field;
  if (place?.ply) return ['stack', 'plies', place.ply - 1, field];
  if (place === 'tapped_part') return ['stack', 'tapped_part', field];
  return undefined;
}

/** The same in the document of a connection. */
function saidInConnection(missing, { joint, plates }) {
  const { code, place } = missing;
  if (code === 'loaded_ply') return ['loaded'];
  if (code === 'load') return ['cases'];
  if (SAID_OF_PLATE[code]) {
    const ply = joint?.stack?.plies?.[place?.ply - 1]?.name;
    const at = Array.isArray(plates) ? plates.findIndex(plate => plate?.ply === ply) : -1;
    return at < 0 ? ['plates'] : ['plates', at, SAID_OF_PLATE[code]];
  }
  const inJoint = saidInJoint(missing);
  return inJoint && ['joint', ...inJoint];
}

/** The same in a document of a kind. */
export const saidIn = (kind, missing, whole) => kind === 'joint' ? saidInJoint(missing) : saidInConnection(missing, whole);
