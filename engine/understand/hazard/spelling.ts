/**
 * Slips of a thumb, put right: two letters swapped, one doubled or missing, the key beside it. Only towards words of
 * danger, and never away from a word that people also type: "parking" is no "sparking".
 */
import { MAYBE } from './words-maybe.ts';
import { NOW } from './words-now.ts';

/** The word meant, where the one typed is a slip; else the word itself. */
export const spelled = (word: string): string => SLIPS.get(word) ?? word;

/** Usual misspellings that are more than one slip away, or of short words. */
const MISSPELT = `shoc shock, gass gas, schock shock, shok shock, shoked shocked, shockt shocked, electricuted electrocuted, electrecuted electrocuted,
  electrocuded electrocuted, elecrocuted electrocuted, fier fire, fite fire, fiire fire, frie fire,
  onfire fire, flams flames, smok smoke, smke smoke, smokee smoke, smoks smoke, smokin smoking, burnin burning, buring burning,
  burnign burning, burningsmell burning, exploaded exploded, explosed exploded, explotion explosion, expolded exploded,
  unconcious unconscious, unconsious unconscious, uncontious unconscious, heatstoke heatstroke,
  heatstrok heatstroke, hrut hurt, injuerd injured, injerd injured, brunt burnt, bunred burned, scortched scorched,
  arcd arced, arcking arcing, arked arced, arking arcing, smels smells, ambulence ambulance, amblance ambulance, faintd fainted,
  seisure seizure`;

const SHORTEST = 5;
/** From here on a missing letter leaves enough to know the word by. */
const LONG = 7;
const ROWS = ['qwertyuiop', 'asdfghjkl', 'zxcvbnm'];
/** Words of longer phrases that are typed wrong as often. */
const ALSO =
  `smell smells smelled smelling smoke burning bleeding breathing breathe unconscious unresponsive stroke exhaustion bitten
  rotten detector passed collapsed electric refrigerant ambulance`.split(/\s+/);
/** Words in their own right that are one slip away. */
const OTHERS = new Set(
  `park parks parked parking parkin fries flakes flake flaking flamingo tainted tainting explore explores explored exploring socks sock
  socked stocks stocked stock hocked shoes shook shaking soaking soaked spoke spokes burner burners turning bunting hunting blowing
  meting pasted passes posted breeding breading speeding heeding patting putting pitying potted petted fitted frames framing flashing
  strike stroked smelt smelly small smalls shells shelling swells spell spells spelled swelling swelled reading beating leading
  electrics burned burnt burns boring bearing during curing burying bury broken rotted bitter button buttons batten written beaten
  smiling smile smiles charted chatted arching parched searched scratched arc arcs dazed singled signed sign signs single sinned
  exposed expose exposes collapse racing raced fumed flame flames fired tired passer paused`.split(/\s+/),
);

const besides = (c: string): string => {
  const row = ROWS.findIndex((keys) => keys.includes(c));
  const at = ROWS[row]?.indexOf(c) ?? -1;
  const near = (r: number, from: number, to: number): string => ROWS[r]?.slice(Math.max(0, from), to) ?? '';
  return (near(row, at - 1, at + 2) + near(row - 1, at, at + 2) + near(row + 1, at - 1, at + 1)).replace(c, '');
};

function slipsOf(word: string, keys: boolean): string[] {
  const out: string[] = [];
  for (let i = 0; i < word.length; i++) {
    const [head, c, next, tail] = [word.slice(0, i), word.charAt(i), word.charAt(i + 1), word.slice(i + 2)];
    out.push(head + next + c + tail, head + c + c + next + tail);
    if (word.length >= LONG || c === next) out.push(head + next + tail);
    if (keys && i > 0) for (const other of besides(c)) out.push(head + other + next + tail);
  }
  return out;
}

const single = (table: typeof NOW): string[] => table.flatMap(([, phrases]) => phrases.filter((p) => !p.includes(' ')));
const urgent = [...single(NOW), ...ALSO];
const marks = single(MAYBE);
const KNOWN = new Set([...urgent, ...marks, ...OTHERS]);
const SLIPS = new Map(
  MISSPELT.split(',').map((pair): [string, string] => pair.trim().split(/\s+/) as [string, string]),
);
for (const [words, keys] of [
  [urgent, true],
  [marks, false],
] as const)
  for (const word of words.filter(({ length }) => length >= SHORTEST))
    for (const slip of slipsOf(word, keys)) if (!KNOWN.has(slip) && !SLIPS.has(slip)) SLIPS.set(slip, word);
