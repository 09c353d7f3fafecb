// Quantities of a report in the units that are asked for. A report has them in SI; its texts are in the right units already.

/** For each unit of a report: the unit in inch surroundings, how many of the first make one of it (exact), and decimals. */
const INCH = {
  mm: ['in', 25.4, 3], N: ['lbf', 4.4482216152605, 0], MPa: ['ksi', 6.894757293168361, 1], 'N m': ['lbf ft', 1.3558179483314004, 1],
};
const METRIC = { mm: ['mm', 1, 2], N: ['kN', 1000, 2], MPa: ['MPa', 1, 1], 'N m': ['N m', 1, 1] };

/** "12.70 mm"; a number without unit has four digits. A unit that is not known here is shown as it is. */
export function shown(quantity, units) {
  if (quantity === null || quantity === undefined) return '';
  if (typeof quantity === 'number') return String(Number(quantity.toPrecision(4)));
  const [unit, one, decimals] = (units === 'si' ? METRIC : INCH)[quantity.unit] ?? [quantity.unit, 1, 3];
  return `${(quantity.value / one).toFixed(decimals)} ${unit}`;
}

/** "12.70 mm (12.32 mm to 13.08 mm)". */
export function spread({ min, nominal, max }, units) {
  if (min.value === max.value) return shown(nominal, units);
  return `${shown(nominal, units)} (${shown(min, units)} to ${shown(max, units)})`;
}
