/**
 * The sentences of pages and judgements that name degrees: {t} is a temperature, {d} a difference of two. Both are
 * written °F, and 10 °F apart is 5.6 °C apart while 10 °F is −12.2 °C, so nothing is converted by its looks alone: what
 * stands in no sentence of this list is shown as it is. A test goes through every page and every judgement and fails for
 * a sentence that is missing here.
 */
export const SENTENCES: readonly string[] = [
  // Air over a coil.
  'split is {d}, inside {d}',
  'split is {d}, outside {d}',
  'air is cooled by {d}',
  'supply is {d} warmer',
  'Expected is {d} ±{d}',
  'humidity, ±{d}: our model',
  'plain range of {d}',
  'No air has {t} and a wet-bulb of {t}',
  'return is at {t}',
  'says something from {t} only',
  '{d} at usual humidity',
  // Refrigerant.
  'Saturation is {t}, the line {t}: {d}',
  'It should be {d}',
  'The target would be {d}. Under {d} no charge',
  'would boil below {t}',
  'Within {d} it could be either',
  'under the return air: {d}',
  'above the outdoor air: {d}',
  'saturation {d} under the return, condensing {d} above the outdoor air',
  '{d} above the outdoor air',
  '{d} usual, above {d} short of air',
  '{d}; short of air above {d}',
  'falls by {d} across',
  'ore than {d} across',
  'ore than {d} through',
  'armed through the valve by {d}',
  'armed through the valve by more than {d}',
  'line is {d} warmer',
  'large {t}, small {t}',
  // Boxes and their goods.
  'box went from {t} to {t}',
  '{t} → {t}',
  '{d} down or more',
  'goods are at {t}, above {t}',
  'goods are at {t}',
  'Food above {t}',
  'Hours above {t}',
  '{t}: FDA Food Code',
  'food at {t} or below',
  // People in the heat.
  'ndoors {t} at',
  'utdoors {t} at',
  'feels like {t}',
  '{t} is outside {t}',
  'categories from {t}',
  // Thermostats, shells, windings, thermistors.
  '{d} below the room',
  'ithin {d} of the air',
  'Read at {t}, it would be',
  'kΩ at {t}',
];

/** Findings by their names: what the degrees of their reading and of their limits are. */
export const CELLS: readonly (readonly [name: RegExp, reading: '°F' | 'Δ°F', limits: '°F' | 'Δ°F'])[] = [
  [/^(Split|Superheat|Subcooling|Across the part)(,|$)/, 'Δ°F', 'Δ°F'],
  [/^(Liquid line above|Suction saturation under|Condensing above)/, 'Δ°F', 'Δ°F'],
  [/^Lines at the reversing valve$/, 'Δ°F', 'Δ°F'],
  [/^Box$/, '°F', 'Δ°F'],
  [/^(Heat index|Perishable goods)$/, '°F', '°F'],
];
