import { Exact } from '../../calc/exact.ts';
import { ohmsFinding, sayOhms } from '../control/ohm-band.ts';
import { judgement } from '../judgement.ts';
import { over, past, read, reads, untaken } from '../probing.ts';
import { readingOf } from '../read.ts';
import { say } from '../say.ts';

/**
 * A potential relay at rest, wires off, Ω: contacts 1–2 closed, coil 5–2 in its band. Open contacts give no start
 * assist; an open coil never takes the start capacitor out. Welded contacts don't show at rest. Common practice.
 */
export const potentialRelay = judgement({
  id: 'potential-relay',
  semantics: 1,
  takes: ['readings'],
  limits: ['closed', 'coilLow', 'coilHigh'],
  outcomes: ['good', 'contacts-open', 'coil-open', 'between', 'undecided'],
  run({ readings }, { closed, coilLow, coilHigh }) {
    const contacts = readingOf(readings, 'contacts', 'Ω');
    const coil = readingOf(readings, 'coil', 'Ω');
    const most = `${say(closed.value, 'Ω')} or less`;
    const band = `${sayOhms(figure(coilLow.value))} to ${sayOhms(figure(coilHigh.value))}`;
    const isClosed = contacts.kind === 'figure' && contacts.value.abs().lte(closed.value);
    const inBand = coil.kind === 'figure' && coil.value.gte(coilLow.value) && coil.value.lte(coilHigh.value);
    const [c, w] = [sayOhms(contacts), sayOhms(coil)];
    const ofContacts = isClosed ? 'closed' : BANDS[contacts.kind];
    const ofCoil = inBand ? 'good' : BANDS[coil.kind];
    const contactsSay = {
      closed: `Contacts 1–2 read ${c} at rest. They are closed.`,
      open: 'Contacts 1–2 read OL at rest and have to be closed. There is no start assist.',
      between: `Contacts 1–2 read ${c} at rest, more than ${say(closed.value, 'Ω')}. Zero the leads, read them again.`,
      missing: 'Contacts 1–2 were not read.',
    }[ofContacts];
    const coilSays = {
      good: `The coil 5–2 reads ${w}, inside ${band}.`,
      open: 'The coil 5–2 reads OL. It is open: the relay never takes the start capacitor out.',
      between: `The coil 5–2 reads ${w}, outside ${band}. Read it again, wires off.`,
      missing: 'The coil 5–2 was not read.',
    }[ofCoil];
    const findings = [
      ohmsFinding('Contacts 1–2', contacts, ofContacts, contactsSay, closed, most),
      ohmsFinding('Coil 5–2', coil, ofCoil, coilSays, coilLow, band),
    ];
    if (ofContacts === 'open') return { outcome: 'contacts-open', findings };
    if (ofCoil === 'open') return { outcome: 'coil-open', findings };
    if (ofContacts === 'between' || ofCoil === 'between') return { outcome: 'between', findings };
    return { outcome: ofContacts === 'closed' && ofCoil === 'good' ? 'good' : 'undecided', findings };
  },
  probe({ closed, coilLow, coilHigh }) {
    const good = reads({ contacts: closed.value, coil: coilLow.value }, 'Ω');
    return [
      { readings: good },
      { readings: { ...good, ...reads({ coil: coilHigh.value }, 'Ω') } },
      { readings: { ...good, contacts: over } },
      { readings: { ...good, coil: over } },
      { readings: { ...good, contacts: read(past(closed.value, '0.001'), 'Ω') } },
      { readings: { ...good, coil: read(past(coilLow.value, '-0.001'), 'Ω') } },
      { readings: { ...good, coil: read(past(coilHigh.value, '0.001'), 'Ω') } },
      { readings: { ...good, coil: untaken } },
      {},
    ];
  },
});

const BANDS = { figure: 'between', over: 'open', none: 'missing' } as const;
const figure = (value: string) => ({ kind: 'figure' as const, value: new Exact(value) });
