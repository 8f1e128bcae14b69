import type { Exact } from '../calc/exact.ts';
import { judgement } from './judgement.ts';
import { print, reads, untaken } from './probing.ts';
import { figureOf, printOf } from './read.ts';
import { digits, finding } from './say.ts';

const POSITIONS = ['t1', 't2', 't3'] as const;
const SOURCE = 'common practice, no single source: C four tabs, HERM three, FAN one';

/** Terminals of an unmarked dual part by their tabs: the most is C, then HERM, the fewest is FAN. The readings prove it. */
export const tabs = judgement({
  id: 'tabs',
  semantics: 1,
  takes: ['tabs', 'label'],
  limits: [],
  outcomes: ['found', 'unclear', 'undecided'],
  run({ tabs, label }) {
    const counts = POSITIONS.map((key) => figureOf(tabs, key, 'count'));
    const said = (word: string, text: string) =>
      finding({
        name: 'Tabs',
        reading: counts.map((c) => (c === null ? '?' : digits(c, 0))).join(', '),
        word,
        text,
        source: SOURCE,
      });
    if (tabs === undefined) return { outcome: 'undecided', findings: [said('missing', 'Nobody counted the tabs.')] };
    if (printOf(label)?.fan === null) {
      const text = 'A part with one section has no FAN terminal to find.';
      return { outcome: 'unclear', findings: [said('unclear', text)] };
    }
    const ranked = POSITIONS.map((_, i) => ({ place: i + 1, count: counts[i] ?? null }))
      .filter((t): t is { place: number; count: Exact } => t.count !== null)
      .sort((a, b) => b.count.cmp(a.count));
    const [c, herm, fan] = ranked;
    if (!c || !herm || !fan || c.count.eq(herm.count) || herm.count.eq(fan.count)) {
      const text = c && herm && fan ? 'Two terminals have the same number of tabs.' : 'A terminal was not counted.';
      return { outcome: 'unclear', findings: [said('unclear', `${text} The tabs do not tell the terminals.`)] };
    }
    const text = `Clockwise from your mark: terminal ${c.place} is C, terminal ${herm.place} is HERM, terminal ${fan.place} is FAN. Three readings have to prove it.`;
    return { outcome: 'found', findings: [said('found', text)] };
  },
  probe: () => [
    { tabs: reads({ t1: 4, t2: 3, t3: 1 }, 'count') },
    { tabs: reads({ t1: 1, t2: 4, t3: 3 }, 'count') },
    { tabs: reads({ t1: 4, t2: 3, t3: 3 }, 'count') },
    { tabs: reads({ t1: 4, t2: 4, t3: 1 }, 'count') },
    { tabs: { ...reads({ t1: 4, t2: 3 }, 'count'), t3: untaken } },
    { tabs: reads({ t1: 4, t2: 3, t3: 1 }, 'count'), label: print({ herm: '45', fan: null }) },
    {},
  ],
});
