/** What somebody does next: most often the sound thing, so that conversations get somewhere, and now and then trouble. */
import type { Prompt } from '../../schema.ts';
import type { Chance } from './chance.ts';
import type { Lines, Script } from './lines.ts';
import { DISPATCHER, firstName, JUNIOR, OWNER, SECOND, SENIOR } from './people.ts';
import type { Played } from './play.ts';
import type { Saying, Step, Trouble } from './step.ts';
import { DANGER, FREE, FROM_AFAR, MAYBE, NOT_DANGER, SKIPS, spoiled } from './words.ts';

const MINUTE = 60_000;
const EVERYBODY = [JUNIOR, SECOND, SENIOR, DISPATCHER, OWNER] as const;
const LED = [SENIOR, OWNER] as const;
/** How often something goes wrong, in a thousand. */
export type Mood = 'calm' | 'usual' | 'wild';
const TROUBLE: Readonly<Record<Mood, number>> = { calm: 60, usual: 190, wild: 480 };

export class Chooser {
  /** Lines of the worked call that were said, and where. */
  private readonly said = new Map<string, string>();
  private next = 0;
  private lead: string;
  /** What was refused in a row. */
  private refusals = 0;
  private pending: { step: string; line: string } | null = null;

  constructor(
    private readonly chance: Chance,
    private readonly lines: Lines,
    private readonly script: Script,
    readonly mood: Mood,
    lead: string,
  ) {
    this.lead = lead;
  }

  /** Null where nobody has anything more to say. */
  step(played: Played): Step | null {
    const { chance, mood } = this;
    this.learn(played);
    const { prompt } = played;
    if (prompt.kind === 'signed' && !chance.in1000(100)) return null;
    if (prompt.kind === 'finished' && chance.in1000(500)) return null;
    const trouble = chance.in1000(TROUBLE[mood]);
    const saying = (trouble ? this.troubled(played) : null) ?? this.sound(played);
    const beside = trouble && chance.in1000(90) ? this.beside(played) : undefined;
    const dies = chance.in1000(trouble ? 70 : 12) ? this.death() : undefined;
    const echo = chance.in1000(trouble ? 50 : 6) ? chance.below(4) : undefined;
    const set = trouble && chance.in1000(70) ? this.clock() : undefined;
    return {
      gap: this.gap(played, trouble),
      ...(set === undefined ? {} : { set }),
      saying,
      via: chance.in1000(60) ? 1 : 0,
      ...(beside ? { beside } : {}),
      // Where two speak at once, neither process dies.
      ...(dies && !beside ? { trouble: dies } : {}),
      ...(echo === undefined ? {} : { echo }),
    };
  }

  /** A line that was taken is known from now on at its step. */
  private learn({ last, record }: Played): void {
    const refused = last?.refusal ?? null;
    this.refusals = refused ? this.refusals + 1 : 0;
    if (this.pending && !refused && last?.entries.some((e) => e.kind === 'answered'))
      this.lines.takes(this.pending.step, this.pending.line);
    this.pending = null;
    const taken = record.findLast((e) => e.kind === 'acknowledged' && e.by !== OWNER)?.by;
    const given = record.findLast((e) => e.kind === 'handed-over');
    if (given && taken && record.some((e) => e.kind === 'acknowledged' && e.body.of === given.seq)) this.lead = taken;
  }

  private sound(played: Played): Saying {
    const { chance } = this;
    const { prompt, record } = played;
    const by = prompt.holder ?? this.lead;
    const led = LED.find((one) => one !== by) ?? OWNER;
    const say = (text: string, who = by): Saying => ({ by: who, what: { say: text } });
    switch (prompt.kind) {
      case 'emergency':
        if (chance.in1000(250)) return { by, what: { tap: { choice: 'seen' } } };
        return chance.in1000(200)
          ? say('not here', record.findLast((e) => e.kind === 'alarmed')?.by ?? by)
          : say('release all clear, seen in person', this.otherLead(prompt));
      case 'hazard-question': {
        const writer = record.findLast((e) => e.kind === 'noted' && e.body.as === 'hazard')?.by ?? by;
        return { by: writer, what: { tap: { choice: chance.in1000(850) ? 'old-mark' : 'happening' } } };
      }
      case 'stopping':
        return { by, what: { tap: { cover: 'on', lock: chance.in1000(700) ? 'stays' : 'off' } } };
      case 'paused':
        return say('go on');
      case 'taking-over': {
        const to = record.findLast((e) => e.kind === 'handed-over');
        return say('take over', to?.kind === 'handed-over' ? to.body.to : by);
      }
      case 'held':
      case 'waiting':
        return say('approve seen on video', this.otherLead(prompt));
      case 'finished':
        return say(chance.in1000(800) ? 'sign' : 'note all tidy', led);
      case 'signed':
        return say('note called the customer', led);
      default:
        return this.answer(played, by);
    }
  }

  /** The next line of the worked call; a line said here before; a tap. */
  private answer({ prompt, last }: Played, by: string): Saying {
    const { chance } = this;
    const step = this.lines.stepOf(prompt);
    if (last?.refusal?.code === 'not-certified')
      return { by, what: { say: chance.in1000(500) ? 'cant' : `hand over ${firstName(SECOND)}` } };
    const taps = this.lines.tapsAt(prompt);
    if (this.refusals > 0 && taps.length > 0) {
      const tap = taps[this.refusals === 1 ? 0 : chance.below(taps.length)];
      if (tap) return { by, what: { tap } };
    }
    const before = this.said.get(step);
    // Asked again, a sound technician says the same; a page's later tries are asked anew.
    const line =
      before !== undefined && (prompt.class === 'proving' || step.includes('dead') || chance.in1000(500))
        ? before
        : this.script.lines[this.next++];
    if (line !== undefined) {
      this.said.set(step, line);
      this.pending = { step, line };
      return { by, what: { say: line } };
    }
    const known = this.lines.at(step);
    const line2 = known[chance.below(Math.max(1, known.length))];
    if (line2 !== undefined && chance.in1000(600)) return { by, what: { say: line2 } };
    const tap = taps[chance.in1000(700) ? 0 : chance.below(Math.max(1, taps.length))];
    return { by, what: tap ? { tap } : { say: line2 ?? 'yes' } };
  }

  private otherLead(prompt: Prompt): string {
    const holder = prompt.holder ?? this.lead;
    return this.chance.one(LED.filter((one) => one !== holder) as [string, ...string[]]);
  }

  private troubled(played: Played): Saying | null {
    const { chance } = this;
    const { prompt, record } = played;
    const by = prompt.holder ?? this.lead;
    const say = (text: string, more: Partial<Saying> = {}): Saying => ({ by, what: { say: text }, ...more });
    const anybody = (): string => chance.one(EVERYBODY);
    const sound = (): Saying => this.sound(played);
    const kind = chance.weighed<() => Saying | null>([
      [5, () => say(chance.one(DANGER), { by: anybody(), means: 'danger' })],
      [6, () => say(chance.one(MAYBE))],
      [4, () => say(chance.one(NOT_DANGER))],
      [6, () => say('stop', { by: anybody(), means: 'stop' })],
      [5, () => say('power is back', { by: anybody() })],
      [3, () => say('lock is off', { by: anybody() })],
      [6, () => say(`hand over ${firstName(chance.one(EVERYBODY))}`, { by: chance.one([by, SENIOR, DISPATCHER]) })],
      [9, () => say(chance.one(FROM_AFAR), { by: anybody() })],
      [12, () => say(chance.one(FREE))],
      [8, () => say(chance.one(SKIPS))],
      [14, () => this.otherTap(prompt, by)],
      [8, () => this.otherLine(prompt, by)],
      [8, () => this.spoil(sound())],
      [6, () => this.backwards(record, by)],
      [5, () => say('take back')],
      [7, () => ({ ...sound(), late: 1 + chance.below(3) })],
      [2, () => ({ ...sound(), late: -1 })],
      [4, () => ({ ...sound(), offline: true })],
      [3, () => ({ ...sound(), behind: chance.one([-20, 5, 25, 29, 40, 600] as const) * MINUTE })],
      [5, () => ({ ...sound(), by: anybody() })],
      // The clock, a death or somebody else is the trouble of this step.
      [12, () => null],
    ]);
    return kind?.() ?? null;
  }

  private otherTap(prompt: Prompt, by: string): Saying | null {
    const taps = this.lines.tapsAt(prompt);
    const tap = taps[this.chance.below(Math.max(1, taps.length))];
    return tap ? { by, what: { tap } } : null;
  }
  private otherLine(prompt: Prompt, by: string): Saying | null {
    const known = this.lines.at(this.lines.stepOf(prompt));
    const line = known[this.chance.below(Math.max(1, known.length))];
    return line === undefined ? null : { by, what: { say: line } };
  }
  private spoil(saying: Saying): Saying {
    return 'say' in saying.what ? { ...saying, what: { say: spoiled(saying.what.say, this.chance.below(5)) } } : saying;
  }
  /** An earlier answer is changed or taken back, also a gate's. */
  private backwards(record: Played['record'], by: string): Saying | null {
    const { chance } = this;
    const places = [...new Set(record.flatMap((e) => (e.kind === 'answered' ? [e.body.place] : [])))];
    const place = places[chance.below(Math.max(1, places.length))];
    if (place === undefined) return null;
    const who = chance.in1000(750) ? by : chance.one(EVERYBODY);
    const why = chance.in1000(500) ? { reason: 'seen wrong' } : {};
    if (chance.in1000(400)) return { by: who, what: { takeBack: place, ...why } };
    const taps = this.lines.samples(place);
    const to = taps[chance.below(Math.max(1, taps.length))];
    return to ? { by: who, what: { change: place, to, ...why } } : null;
  }

  private beside(played: Played): Saying {
    const { chance } = this;
    const { prompt } = played;
    const what = chance.weighed<() => Saying>([
      [5, () => ({ by: chance.one([JUNIOR, SECOND]), what: this.sound(played).what })],
      [2, () => ({ by: chance.one(EVERYBODY), what: { say: 'power is back' } })],
      [2, () => ({ by: chance.one(EVERYBODY), what: { say: chance.one(DANGER) }, means: 'danger' })],
      [2, () => ({ by: chance.one(EVERYBODY), what: { say: 'stop' } })],
      [2, () => ({ by: SENIOR, what: { say: `hand over ${firstName(SECOND)}` } })],
      [3, () => ({ by: DISPATCHER, what: { say: 'note customer waits' } })],
      [2, () => this.otherTap(prompt, prompt.holder ?? this.lead) ?? { by: SENIOR, what: { say: 'where' } }],
    ]);
    return what?.() ?? { by: SENIOR, what: { say: 'where' } };
  }

  private death(): Trouble {
    return this.chance.one(['lost', 'unheard', 'unheard', 'given-up', 'again', 'restart'] as const);
  }
  /** Somebody or a time server sets the clock. */
  private clock(): number {
    return this.chance.one([-29, -31, -120, -1440, -1, 20, 31, 1440] as const) * MINUTE;
  }
  /** Seconds as a rule; in trouble also the age of a proof to the millisecond, more, and days. */
  private gap({ prompt }: Played, trouble: boolean): number {
    const { chance } = this;
    if (!trouble || chance.in1000(750)) return (5 + chance.below(80)) * 1000;
    const long = [30 * MINUTE, 30 * MINUTE + 1, 31 * MINUTE, 29 * MINUTE, 45 * MINUTE, 26 * 60 * MINUTE] as const;
    return prompt.isolation.some((l) => l.state !== 'not-proved')
      ? chance.one(long)
      : chance.one([...long, 72 * 60 * MINUTE]);
  }
}
