import type { Finding } from '../../schema.ts';
import { judgement } from '../judgement.ts';
import { print, untaken } from '../probing.ts';
import { finding } from '../say.ts';
import { choiceFinding, INCOMPLETE, refusedFinding, sayReason } from './substitute-words.ts';
import { OFFERED, type Offer, offerOf } from './truck-stock.ts';
import { askedFor, type Rating, wantedOf } from './wanted.ts';

/**
 * What the truck has for the part that comes out: the choices by number, the best first, then every other capacitor
 * with the reason why not. The diagram's rating governs where it is known. Source: common practice, no single source.
 */
export const substitutes = judgement({
  id: 'substitutes',
  semantics: 1,
  takes: ['old', 'diagram'],
  limits: ['volts'],
  outcomes: ['some', 'none', 'no-stock', 'undecided'],
  run({ old, diagram }, { volts }, { truck }) {
    const rating = wantedOf(old, diagram, volts);
    if (rating === null) return { outcome: 'undecided', findings: [askedFor(null)] };
    const offer = offerOf(rating, truck);
    if (offer === null) {
      return {
        outcome: 'no-stock',
        findings: [askedFor(rating, 'no stock', 'No capacitor is on record for this truck.')],
      };
    }
    const lines = [...choicesOf(offer, rating), ...refusals(offer, rating)];
    if (offer.found.choices.length > 0) return { outcome: 'some', findings: [...lines, askedFor(rating, 'found')] };
    return {
      outcome: 'none',
      findings: [...lines, askedFor(rating, 'none', 'Nothing on this truck may take its place.')],
    };
  },
  probe: () => [
    { old: print({ herm: '45', fan: '5' }) },
    { old: print({ herm: '45', fan: '5', volts: null }) },
    { old: print({ herm: '45', fan: '5' }), diagram: print({ herm: '60', fan: '30' }) },
    { diagram: print({ herm: '45', fan: '5', volts: null }) },
    { old: print({ herm: '227', fan: null, range: { low: '189', high: '227' } }) },
    { old: { print: untaken } },
    {},
  ],
});

function choicesOf(offer: Offer, rating: Rating): Finding[] {
  const { choices } = offer.found;
  const shown = choices.slice(0, OFFERED).map((choice, i) => choiceFinding(String(i + 1), choice, offer, rating));
  const more = choices.length - shown.length;
  if (more === 0) return shown;
  const text = 'Further ways are admissible. None is more exact than these.';
  return [...shown, finding({ name: 'Further ways', reading: String(more), word: 'not offered', text })];
}

function refusals({ items, found, incomplete }: Offer, rating: Rating): Finding[] {
  return items.flatMap((item) => {
    if (incomplete.includes(item)) return [refusedFinding(item, INCOMPLETE)];
    const refused = found.rejected.find(({ id }) => id === item.id);
    return refused ? [refusedFinding(item, sayReason(refused.reason, rating))] : [];
  });
}
