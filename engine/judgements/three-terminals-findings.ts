/** What the three readings of an unmarked part say, terminal by terminal. */
import { windowMicrofarads } from '../calc/doubt.ts';
import { Exact } from '../calc/exact.ts';
import { seriesMicrofarads } from '../calc/series.ts';
import type { Naming, PairwiseMicrofarads, Terminal, Terminals } from '../calc/terminals.ts';
import type { Finding } from '../schema.ts';
import type { Force } from './judgement.ts';
import { finding, say, sayRange, saySigned } from './say.ts';
import { sayMeter } from './section.ts';

type Named = Pick<Naming, 'c' | 'herm' | 'fan'>;
const NUMBER: Readonly<Record<Terminal, string>> = { X: '1', Y: '2', Z: '3' };

/** Terminals are numbered in the order they were read and counted in. */
export const sayNaming = ({ c, herm, fan }: Named): string =>
  `terminal ${NUMBER[c]} is C, terminal ${NUMBER[herm]} is HERM, terminal ${NUMBER[fan]} is FAN`;

const readingAt = (pairs: PairwiseMicrofarads, a: Terminal, b: Terminal): Exact => {
  const pair = [a, b].sort().join('');
  return new Exact(pair === 'XY' ? pairs.xy : pair === 'XZ' ? pairs.xz : pairs.yz);
};

export function terminalFindings(
  pairs: PairwiseMicrofarads,
  found: Terminals,
  counted: Named | null,
  force: Force,
): Finding[] {
  const lines =
    found.is === 'does-not-fit'
      ? [proof(pairs, found.nearest, false, force)]
      : found.fitting.map((naming) => proof(pairs, naming, true, force));
  return [...lines, verdict(found, force), ...(counted ? [tabsLine(counted, found)] : [])];
}

/** One naming against physics: the third pair reads the other two in series. */
function proof(pairs: PairwiseMicrofarads, naming: Naming, fits: boolean, { meter }: Force): Finding {
  const [herm, fan, third] = [
    readingAt(pairs, naming.c, naming.herm),
    readingAt(pairs, naming.c, naming.fan),
    readingAt(pairs, naming.herm, naming.fan),
  ];
  const series = say(seriesMicrofarads(herm, fan), 'µF', 3);
  const off = saySigned(naming.residualMicrofarads, 'µF', 3, 0);
  return finding({
    name: `C on ${NUMBER[naming.c]}, HERM on ${NUMBER[naming.herm]}, FAN on ${NUMBER[naming.fan]}`,
    reading: `${say(herm, 'µF')}, ${say(fan, 'µF')}, ${say(third, 'µF')}`,
    limits: series,
    doubt: sayRange(windowMicrofarads(meter, third), 'µF', 2),
    word: fits ? 'fits' : 'does not fit',
    text: `${say(herm, 'µF')} and ${say(fan, 'µF')} in series give ${series}. HERM–FAN reads ${say(third, 'µF')}, ${off} off, ${fits ? 'within the doubt' : 'beyond the doubt'}.`,
    source: '1/x + 1/y = 1/z, physics',
  });
}

function verdict(found: Terminals, { meter }: Force): Finding {
  const assumed = meter.known ? '' : ` The meter is not known, so ${sayMeter(meter)} is assumed.`;
  const commons = new Set(found.fitting.map((n) => n.c));
  const [only] = commons;
  const text = {
    determined: `By the readings ${sayNaming(found.fitting[0] ?? found.nearest)}.`,
    ambiguous:
      commons.size === 1 && only
        ? `Terminal ${NUMBER[only]} is C. The two sections read too alike to tell HERM from FAN.`
        : 'More than one naming fits within the doubt of this meter. A finer meter tells them apart.',
    'does-not-fit': 'No naming fits. A lead, a wire still on, or a bad section spoils it: read the three again.',
  }[found.is];
  const word = { determined: 'determined', ambiguous: 'ambiguous', 'does-not-fit': 'does not fit' }[found.is];
  return finding({ name: 'Terminals', reading: '–', word, text: `${text}${assumed}`, source: 'physics' });
}

function tabsLine(counted: Named, found: Terminals): Finding {
  const agree = sayNaming(counted) === sayNaming(found.nearest);
  const text = agree
    ? `By the tabs ${sayNaming(counted)}. The readings come nearest to the same.`
    : `By the tabs ${sayNaming(counted)}. The readings come nearest to another naming, so the tabs don’t decide.`;
  return finding({
    name: 'Tabs',
    reading: '–',
    word: agree ? 'agree' : 'disagree',
    text,
    source: 'common practice, no single source: C has the most tabs, then HERM, FAN the fewest',
  });
}
