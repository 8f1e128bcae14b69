import { ohmsFinding, sayOhms } from '../control/ohm-band.ts';
import { judgement } from '../judgement.ts';
import { chose, over, past, read, reads, untaken } from '../probing.ts';
import { chosenOf, readingOf } from '../read.ts';
import { say } from '../say.ts';

/**
 * A current relay at rest, held upright, Ω: contacts open (OL), coil near zero. Closed contacts leave the start winding
 * in circuit; an open coil leaves the run winding without current. Common practice, no single source.
 */
export const currentRelay = judgement({
  id: 'current-relay',
  semantics: 1,
  takes: ['readings', 'upright'],
  limits: ['closed', 'coil'],
  outcomes: ['good', 'contacts-closed', 'coil-open', 'between', 'undecided'],
  run({ readings, upright }, { closed, coil: coilMost }) {
    const contacts = readingOf(readings, 'contacts', 'Ω');
    const coil = readingOf(readings, 'coil', 'Ω');
    const lying = Object.keys(upright ?? {}).some((key) =>
      chosenOf(upright, key).some((c) => c === 'no' || c === 'cant'),
    );
    const isClosed = contacts.kind === 'figure' && contacts.value.abs().lte(closed.value);
    const isSound = coil.kind === 'figure' && coil.value.abs().lte(coilMost.value);
    const [c, w] = [sayOhms(contacts), sayOhms(coil)];
    const ofContacts = isClosed ? 'closed' : OF[contacts.kind];
    const ofCoil = isSound ? 'good' : OF[coil.kind];
    const contactsSay = {
      closed: `The contacts read ${c} at rest and have to be open.`,
      open: 'The contacts read OL at rest. They are open, as they have to be.',
      between: `The contacts read ${c} at rest, neither OL nor closed. Read them again, wires off.`,
      missing: 'The contacts were not read.',
    }[ofContacts];
    const coilSays = {
      good: `The coil reads ${w}, ${say(coilMost.value, 'Ω')} or less.`,
      open: 'The coil reads OL. It is open, and the run winding gets no current.',
      between: `The coil reads ${w}, more than ${say(coilMost.value, 'Ω')}. Zero the leads, read it again.`,
      missing: 'The coil was not read.',
    }[ofCoil];
    const note = lying ? ' The relay was not upright, so this reading counts for nothing.' : '';
    const findings = [
      ohmsFinding('Contacts', contacts, ofContacts, `${contactsSay}${note}`, closed, 'OL'),
      ohmsFinding('Coil', coil, ofCoil, coilSays, coilMost, `${say(coilMost.value, 'Ω')} or less`),
    ];
    if (ofCoil === 'open') return { outcome: 'coil-open', findings };
    if (lying) return { outcome: 'undecided', findings };
    if (ofContacts === 'closed') return { outcome: 'contacts-closed', findings };
    if (ofContacts === 'between' || ofCoil === 'between') return { outcome: 'between', findings };
    return { outcome: ofContacts === 'open' && ofCoil === 'good' ? 'good' : 'undecided', findings };
  },
  probe({ closed, coil }) {
    const good = { contacts: over, ...reads({ coil: coil.value }, 'Ω') };
    const shut = { ...good, contacts: read(closed.value, 'Ω') };
    return [
      { readings: good },
      { readings: good, upright: { ok: chose('yes') } },
      { readings: shut },
      { readings: shut, upright: { ok: chose('no') } },
      { readings: { ...good, contacts: read(past(closed.value, '0.001'), 'Ω') } },
      { readings: { ...good, coil: over } },
      { readings: { ...good, coil: read(past(coil.value, '0.001'), 'Ω') } },
      { readings: { ...good, coil: untaken } },
      {},
    ];
  },
});

const OF = { figure: 'between', over: 'open', none: 'missing' } as const;
