import { Exact } from '../../calc/exact.ts';
import { judgement } from '../judgement.ts';
import { chose, past, volts } from '../probing.ts';
import { confirmed } from '../read.ts';
import { finding } from '../say.ts';
import { crossed, DEVICES, limitsOf, nameOf, walk, walkFinding } from './hop-look.ts';

/**
 * Which switch between the call and the coil is open: volts after each, black on C, or volts across each. What was read
 * across confirms what the walk found. Within the delay after a change of call, no volts decide nothing; and a switch
 * that is open has done its work: it is never jumpered. Limits: common practice, no single source.
 */
export const hopping = judgement({
  id: 'hop',
  semantics: 2,
  takes: ['readings', 'across', 'waited'],
  limits: ['closed', 'open'],
  outcomes: [
    ...['through', 'delay', 'lp', 'hp', 'discharge', 'wire', 'drop'],
    ...['nothing', 'low', 'wait', 'contradicts', 'undecided'],
  ] as const,
  run({ readings, across, waited }, limits) {
    const of = limitsOf(limits);
    const along = walk(readings, of);
    const over = crossed(across, of, limits.open.source);
    const findings = [
      ...(along.is === 'unread' && over.length > 0 ? [] : [walkFinding(along, limits.open.source)]),
      ...over.map((c) => c.finding),
    ];
    const open = over.filter((c) => c.is === 'open');
    const found = along.is === 'open' ? DEVICES.find((d) => d === along.device) : undefined;
    const against =
      over.some((c) => c.device === found && c.is === 'closed') ||
      open.some((c) => found !== undefined && c.device !== found);
    // No volts behind the switches, and one of them shows a part of the volts: neither it nor the wire is condemned on that.
    const partly =
      along.is === 'open' && found === undefined && open.length === 0 && over.some((c) => c.is === 'neither');
    if (against || partly || open.length > 1 || (along.is === 'through' && open.length > 0)) {
      const text = 'The readings contradict each other. Read them again, with the call there and black on C.';
      const line = finding({ name: 'Switches', reading: '–', word: 'contradicts', text });
      return { outcome: 'contradicts', findings: [...findings, line] };
    }
    const device = found ?? open[0]?.device;
    const early = !confirmed(waited);
    if (early && (along.is === 'nothing' || device === 'delay')) {
      const text = 'The delay after a change of call may still run. Read again when it is over.';
      return { outcome: 'wait', findings: [...findings, finding({ name: 'Delay', reading: '–', word: 'wait', text })] };
    }
    if (device) {
      const text = `Open: ${nameOf(device)}. Find why it opened. It is never jumpered.`;
      return { outcome: device, findings: [...findings, finding({ name: 'Open', reading: '–', word: 'open', text })] };
    }
    if (along.is === 'open') return { outcome: 'wire', findings };
    if (along.is === 'nothing' || along.is === 'low' || along.is === 'drop') return { outcome: along.is, findings };
    if (over.some((c) => c.is === 'neither')) return { outcome: 'drop', findings };
    return { outcome: along.is === 'through' ? 'through' : 'undecided', findings };
  },
  probe({ closed, open }) {
    const all = { start: '25.6', delay: '25.6', lp: '25.6', hp: '25.6', discharge: '25.6', coil: '25.6' };
    const at = (of: Partial<typeof all>) => ({ readings: volts({ ...all, ...of }) });
    const dead = past(closed.value, '-0.01');
    const waited = { ok: chose('yes') };
    return [
      at({}),
      { ...at({ delay: '0', lp: '0', hp: '0', discharge: '0', coil: '0' }), waited },
      at({ delay: '0', lp: '0', hp: '0', discharge: '0', coil: '0' }),
      at({ lp: '0', hp: '0', discharge: '0', coil: '0' }),
      at({ hp: '0', discharge: '0', coil: '0' }),
      at({ discharge: '0', coil: '0' }),
      at({ coil: '0' }),
      at({ coil: new Exact('25.6').minus(closed.value).toFixed(2) }),
      at({ coil: new Exact('25.6').minus(dead).toFixed(2) }),
      { readings: volts({ start: dead }), waited },
      { readings: volts({ start: dead }) },
      { readings: volts({ start: closed.value }) },
      { readings: volts({ start: past(open.value, '-0.01') }) },
      { readings: volts({ start: open.value, coil: open.value }) },
      { across: volts({ delay: '0.1', lp: '0.1', hp: open.value }) },
      { across: volts({ hp: past(open.value, '-0.01') }) },
      { across: volts({ lp: closed.value }) },
      { ...at({ coil: '0' }), across: volts({ lp: closed.value }) },
      { across: volts({ lp: dead }) },
      { across: volts({ delay: '25.6' }), waited },
      { across: volts({ lp: '25.6', hp: '25.6' }) },
      { ...at({ hp: '0', discharge: '0', coil: '0' }), across: volts({ hp: '0.1' }) },
      {},
    ];
  },
});
