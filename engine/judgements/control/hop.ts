import { Exact } from '../../calc/exact.ts';
import { judgement } from '../judgement.ts';
import { chose, past, volts } from '../probing.ts';
import { confirmed, figureOf } from '../read.ts';
import { finding, say } from '../say.ts';
import { type Crossed, crossed, DEVICES, isBehind, limitsOf, nameOf, walk, walkFinding } from './hop-look.ts';

/**
 * Which switch between the call and the coil is open: volts after each, black on C, or volts across each. What was read
 * across confirms what the walk found. Within the delay after a change of call, no volts decide nothing; and a switch
 * that is open has done its work: it is never jumpered. Volts lost on the way count only where the coil is left with
 * fewer than it pulls in on: `drop` where a switch shows them, `joint` where every one read is closed. Limits: common
 * practice, no single source.
 */
export const hopping = judgement({
  id: 'hop',
  semantics: 5,
  takes: ['readings', 'across', 'waited'],
  limits: ['closed', 'open', 'pullIn'],
  outcomes: [
    ...['through', 'delay', 'lp', 'hp', 'discharge', 'wire', 'drop', 'joint'],
    ...['nothing', 'low', 'wait', 'contradicts', 'undecided'],
  ] as const,
  run({ readings, across, waited }, limits) {
    const of = limitsOf(limits);
    const along = walk(readings, of);
    const over = crossed(across, of, limits.open.source);
    const open = over.filter((c) => c.is === 'open');
    const shown = open.length === 1 ? open[0]?.device : over.length > 0 && over.every(isClosed) ? null : undefined;
    const findings = [
      ...(along.is === 'unread' && over.length > 0 ? [] : [walkFinding(along, limits.open.source, readings, shown)]),
      ...over.map((c) => c.finding),
    ];
    const coil = figureOf(readings, 'coil', 'V')?.abs();
    const enough = along.is === 'drop' && (coil?.gte(limits.pullIn.value) ?? false);
    const found = along.is === 'open' ? DEVICES.find((d) => d === along.device) : undefined;
    const against =
      over.some((c) => c.device === found && c.is === 'closed') ||
      open.some((c) => found !== undefined && c.device !== found);
    // Volts behind a place that has none: a lead sat on paint there.
    const behind = isBehind(readings, of);
    // No volts behind the switches, and one of them shows a part of the volts: neither it nor the wire is condemned on that.
    const partly =
      along.is === 'open' && found === undefined && open.length === 0 && over.some((c) => c.is === 'neither');
    if (
      against ||
      partly ||
      behind ||
      open.length > 1 ||
      (open.length > 0 && (along.is === 'through' || along.is === 'drop'))
    ) {
      const text = 'The readings contradict each other. Read them again, with the call there and black on C.';
      const line = finding({ name: 'Switches', reading: '–', word: 'contradicts', text });
      return { outcome: 'contradicts', findings: [...findings, line] };
    }
    const device = found ?? open[0]?.device;
    const early = !confirmed(waited);
    if (early && (along.is === 'nothing' || device === 'delay')) {
      const text = 'What this means hangs on the time since the call was changed: a delay holds it for minutes.';
      const line = finding({ name: 'Delay', reading: '–', word: 'by the time', text });
      return { outcome: 'wait', findings: [...findings, line] };
    }
    if (device) {
      const text = `Open: ${nameOf(device)}. Find why it opened. It is never jumpered.`;
      return { outcome: device, findings: [...findings, finding({ name: 'Open', reading: '–', word: 'open', text })] };
    }
    if (along.is === 'open') return { outcome: 'wire', findings };
    if (along.is === 'nothing' || along.is === 'low') return { outcome: along.is, findings };
    if (enough && coil) {
      const [left, least] = [say(coil, 'V'), say(limits.pullIn.value, 'V')];
      const text = `${left} are left at the coil, ${least} or more: enough to pull in.`;
      const { source } = limits.pullIn;
      const line = finding({
        name: 'At the coil',
        reading: left,
        limits: `${least} or more`,
        word: 'enough',
        text,
        source,
      });
      return { outcome: 'through', findings: [...findings, line] };
    }
    // As with an open wire: of a unit without switches all of them were left out.
    const takes = over.some((c) => c.is === 'neither');
    if (along.is === 'drop') return { outcome: takes || across === undefined ? 'drop' : 'joint', findings };
    if (takes) return { outcome: 'drop', findings };
    return { outcome: along.is === 'through' ? 'through' : 'undecided', findings };
  },
  probe({ closed, open, pullIn }) {
    const all = { start: '25.6', delay: '25.6', lp: '25.6', hp: '25.6', discharge: '25.6', coil: '25.6' };
    const at = (of: Partial<typeof all>) => ({ readings: volts({ ...all, ...of }) });
    const dead = past(closed.value, '-0.01');
    const waited = { ok: chose('yes') };
    return [
      at({}),
      { ...at({ delay: '0', lp: '0', hp: '0', discharge: '0', coil: '0' }), waited },
      at({ delay: '0', lp: '0', hp: '0', discharge: '0', coil: '0' }),
      at({ lp: '0', hp: '0', discharge: '0', coil: '0' }),
      at({ hp: '0', discharge: '0' }),
      at({ hp: '0', discharge: '0', coil: '0' }),
      at({ discharge: '0', coil: '0' }),
      at({ coil: '0' }),
      at({ coil: new Exact('25.6').minus(closed.value).toFixed(2) }),
      { readings: volts({ start: '25.6', coil: pullIn.value }) },
      { readings: volts({ start: '25.6', coil: past(pullIn.value, '-0.01').toFixed(2) }) },
      { ...at({ coil: past(pullIn.value, '-0.01').toFixed(2) }), across: volts({ lp: dead }) },
      { ...at({ coil: past(pullIn.value, '-0.01').toFixed(2) }), across: volts({ lp: closed.value }) },
      { readings: volts({ rc: '25.6', coil: past(pullIn.value, '-0.01').toFixed(2) }), across: volts({ lp: dead }) },
      at({ coil: new Exact('25.6').minus(dead).toFixed(2) }),
      { readings: volts({ start: dead }), waited },
      { readings: volts({ start: dead, coil: '0' }), waited },
      { readings: volts({ start: dead }) },
      { readings: volts({ start: dead, coil: open.value }) },
      { readings: volts({ start: closed.value }) },
      { readings: volts({ start: closed.value, coil: '0' }) },
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

const isClosed = ({ is }: Crossed): boolean => is === 'closed';
