/** A conversation as it is played: each step goes to the desk, and the listener hears what came of it. */
import type { Entry, Prompt, Reply } from '../../schema.ts';
import type { JobView, Turn } from '../types.ts';
import { CREW, OWNER } from './people.ts';
import { chainBreaks, notOnce, type Promised } from './reference/record.ts';
import { type Breach, Watch } from './reference/watch.ts';
import type { Opening, Saying, Step } from './step.ts';
import { told } from './step.ts';
import { Died, type World } from './world.ts';

/** Where whoever takes no part is told to be. */
const OUTSIDE = '!outside';

export class Played {
  readonly watch: Watch;
  /** Questions as they were shown, the last one last. */
  readonly asked: Prompt[] = [];
  /** Each step in words, with where it led. */
  readonly lines: string[] = [];
  /** What came of the last reply. */
  last: Turn | null = null;
  turns = 0;
  refused = 0;
  crashes = 0;
  /** Records that were folded anew and compared. */
  replays = 0;
  /** Something was once shown as proved dead. */
  everProved = false;
  private readonly promised: Promised[] = [];
  private readonly sent = new Set<string>();
  private readonly past: { saying: Saying; reply: Reply }[] = [];

  private constructor(
    private readonly world: World,
    readonly job: string,
  ) {
    const { manual } = world.machine.plan;
    this.watch = new Watch({
      roles: Object.fromEntries(CREW.map((p) => [p.id, p.roles])),
      certified: CREW.flatMap((p) => (p.certified ? p.id : [])),
      cabinets: Object.fromEntries(Object.entries(manual.cabinets).map(([id, words]) => [words, id])),
    });
  }

  static async begin(world: World, opening: Opening): Promise<Played> {
    const played = new Played(world, await world.begin(opening));
    await played.look(0);
    for (const { by, client } of played.record) played.sent.add(`${by} ${client}`);
    return played;
  }

  get record(): readonly Entry[] {
    return this.watch.heard.map((h) => h.entry);
  }
  /** The question that was shown last. */
  get prompt(): Prompt {
    return this.asked.at(-1) as Prompt;
  }
  get breaches(): readonly Breach[] {
    return this.watch.breaches;
  }

  async step(step: Step): Promise<void> {
    const { world } = this;
    await world.pass(step.gap);
    if (step.set !== undefined) world.set(step.set);
    if (step.trouble === 'restart') await this.restarted(step.via);
    const echo = step.echo === undefined ? undefined : this.past.at(-1 - step.echo);
    if (echo) await this.send({ by: echo.saying.by, what: echo.saying.what }, echo.reply, step.via);
    const first = this.replyOf(step.saying);
    const second = step.beside && this.replyOf(step.beside);
    if (step.trouble === 'lost' || step.trouble === 'unheard') world.dies = step.trouble;
    if (step.trouble === 'given-up') world.dies = 'unheard';
    await Promise.all([
      this.send(step.saying, first, step.via),
      step.beside ? this.send(step.beside, second ?? null, step.via === 0 ? 1 : 0) : undefined,
    ]);
    world.dies = null;
    if (this.dead !== null) await this.afterDeath(step, first);
    else if (step.trouble === 'again' && (this.last?.entries.length ?? 0) > 0)
      await this.send(step.saying, first, step.via);
    if (step.beside) await this.look(step.via);
    const { kind, place, isolation } = this.prompt;
    const refusal = this.last?.refusal;
    const proved = isolation.filter((l) => l.state === 'proved').map((l) => `, ${l.cabinet} proved dead`);
    this.lines.push(
      `${told(step)}${refusal ? ` — refused: ${refusal.code}` : ''} → ${kind === 'step' ? place : kind}${proved.join('')}`,
    );
  }

  /** The whole record at its end: kept once, chained, and folded anew to the same question. */
  async end(): Promise<void> {
    await this.restarted(0);
    const entries = await this.world.after(this.job, 0);
    for (const what of chainBreaks(entries)) this.watch.say('chain', what);
    for (const what of notOnce(entries, this.promised, this.sent)) this.watch.say('once', what);
  }

  private dead: 0 | 1 | null = null;

  private async afterDeath(step: Step, reply: Reply | null): Promise<void> {
    this.crashes++;
    this.world.kill(this.dead ?? 0);
    this.dead = null;
    this.last = null;
    await this.look(step.via);
    if (step.trouble !== 'given-up') await this.send(step.saying, reply, step.via);
  }
  /**
   * Dies and comes back with what was kept: the same question, to the letter. Where the clock was set back meanwhile the
   * new process reckons more time to have passed, and may ask more.
   */
  private async restarted(which: 0 | 1): Promise<void> {
    const before = await (await this.world.process(which)).look(OWNER, this.job);
    this.crashes++;
    this.world.kill(which);
    const after = await this.look(which);
    if (after.now !== before.now) return;
    this.replays++;
    const differs = differing(before.prompt, after.prompt);
    if (differs.length > 0)
      this.watch.say(
        'replay',
        `the process died, and at ${after.prompt.place} what is shown differs: ${differs.join('; ')}`,
      );
  }

  /** Null where the step speaks of an answer that doesn't stand. */
  private replyOf({ what, late = 0, offline, behind }: Saying): Reply | null {
    const at = this.asked.at(-1 - Math.max(0, late)) ?? (this.asked[0] as Prompt);
    const seq = late < 0 ? at.seq + 7 : at.seq;
    const head = { client: this.world.client(), ...(behind === undefined ? {} : { said: this.world.device(behind) }) };
    const contact = offline ? { offline } : {};
    if ('say' in what) return { kind: 'text', ...head, seq, text: what.say, ...contact };
    if ('tap' in what) return { kind: 'answer', ...head, seq, parts: what.tap, ...contact };
    const place = 'to' in what ? what.change : what.takeBack;
    const of = this.record.findLast((e) => e.kind === 'answered' && e.body.place === place)?.seq;
    if (of === undefined) return null;
    const reason = what.reason === undefined ? {} : { reason: what.reason };
    return 'to' in what
      ? { kind: 'amend', ...head, of, parts: what.to, ...reason }
      : { kind: 'withdraw', ...head, of, ...reason };
  }

  private async send(saying: Saying, reply: Reply | null, via: 0 | 1): Promise<void> {
    if (reply === null) return;
    this.sent.add(`${saying.by} ${reply.client}`);
    const desk = await this.world.process(via);
    const seq = 'seq' in reply ? reply.seq : null;
    const place = this.asked.findLast((p) => p.seq === seq)?.place ?? null;
    let turn: Turn;
    try {
      turn = await desk.reply(saying.by, this.job, reply);
    } catch (error) {
      if (error instanceof Died) this.dead = via;
      else if (!(error instanceof Error && error.name === 'NoRight')) throw error;
      this.turns++;
      this.refused++;
      return;
    }
    this.turns++;
    if (turn.refusal) this.refused++;
    this.last = turn;
    await this.hear();
    // Who takes no part is told that it was heard, and hears nothing of the call.
    const outside = turn.view.prompt.place === OUTSIDE;
    const entries = outside ? this.record.filter((e) => e.by === saying.by && e.client === reply.client) : turn.entries;
    if (entries.length > 0) {
      const hashes = entries.map((e) => e.hash);
      const before = this.promised.find((p) => p.by === saying.by && p.client === reply.client);
      if (!before) {
        this.promised.push({ by: saying.by, client: reply.client, hashes });
        this.past.push({ saying, reply });
      }
      if (before && before.hashes.join() !== hashes.join())
        this.watch.say('once', `${reply.client} was answered with other entries when it was sent again`);
    }
    const after = outside ? (await this.look(via)).prompt : turn.view.prompt;
    if (!outside) this.show(after);
    this.watch.acknowledged(
      {
        ...{ by: saying.by, client: reply.client, place, means: saying.means ?? null },
        ...{ kind: reply.kind === 'answer' || reply.kind === 'text' ? reply.kind : 'other' },
        ...{ refusal: turn.refusal, entries },
      },
      after,
    );
  }

  private async look(which: 0 | 1): Promise<JobView> {
    const view = await (await this.world.process(which)).look(OWNER, this.job);
    await this.hear();
    this.show(view.prompt);
    return view;
  }
  private async hear(): Promise<void> {
    const { watch, world } = this;
    const entries = await world.after(this.job, watch.heard.length);
    // Of two that speak at once, the other may have heard of it meanwhile.
    watch.hear(
      entries.filter((e) => e.seq > watch.heard.length),
      world.passed,
    );
  }
  private show(prompt: Prompt): void {
    this.watch.shown(prompt, this.world.passed);
    this.everProved ||= prompt.isolation.some((l) => l.state === 'proved');
    const before = this.asked.at(-1);
    if (before?.seq === prompt.seq && before.place === prompt.place) this.asked.pop();
    this.asked.push(prompt);
  }
}

/** Parts of a prompt that are not the same, as they were and as they are. */
const differing = (before: Prompt, after: Prompt): string[] =>
  (Object.keys(after) as (keyof Prompt)[]).flatMap((key) => {
    const [was, is] = [JSON.stringify(before[key]), JSON.stringify(after[key])];
    return was === is ? [] : [`${key} ${was} → ${is}`];
  });
