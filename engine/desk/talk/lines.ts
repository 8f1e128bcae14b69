/**
 * What a technician knows to say: the worked calls that the manual's own pages carry, the lines that were once taken at a
 * step, and taps on both sides of every limit.
 */
import type { Machine } from '../../compile.ts';
import { samplesAt } from '../../prove/alphabet.ts';
import type { Given, GivenParts, Prompt } from '../../schema.ts';
import type { Flow } from '../../vocabulary.ts';

export interface Script {
  readonly title: string;
  readonly lines: readonly string[];
}

export class Lines {
  /** Worked calls on units that nobody knows yet. */
  readonly scripts: readonly Script[];
  private readonly taken = new Map<string, string[]>();
  private readonly taps = new Map<string, GivenParts[]>();

  constructor(private readonly machine: Machine) {
    const { manual } = machine.plan;
    const pages = new Map<string, Flow>();
    const gather = (page: Flow): void => {
      if (pages.has(page.id)) return;
      pages.set(page.id, page);
      for (const step of Object.values(page.steps)) if (step.verb === 'include') gather(step.page);
    };
    gather(manual.root);
    gather(manual.isolation.page);
    this.scripts = [...pages.values()].flatMap((page) =>
      (page.examples ?? []).flatMap(({ title, lines, unit }) =>
        unit === undefined && lines.length > 4 ? [{ title: `${page.id}: ${title}`, lines }] : [],
      ),
    );
  }

  /** The step of a question, whatever round and try it is of. */
  stepOf(prompt: Prompt): string {
    const place = this.machine.plan.places.get(prompt.place);
    return place ? `${place.page}/${place.name}` : prompt.place;
  }
  takes(step: string, line: string): void {
    const known = this.taken.get(step) ?? [];
    if (!known.includes(line)) this.taken.set(step, [...known, line]);
  }
  at(step: string): readonly string[] {
    return this.taken.get(step) ?? [];
  }

  /** Everything worth saying at a place, whatever of it is asked there. */
  samples(id: string): readonly GivenParts[] {
    const place = this.machine.plan.places.get(id);
    return place && 'parts' in place.step ? samplesAt(this.machine.plan, place) : [];
  }
  /** Answers by tapping, the sound one first. */
  tapsAt(prompt: Prompt): readonly GivenParts[] {
    const place = this.machine.plan.places.get(prompt.place);
    if (!place || prompt.parts.length === 0) return [];
    const key = `${place.page}/${place.name} ${prompt.parts.map((p) => p.key).join()}`;
    const known = this.taps.get(key);
    if (known) return known;
    const samples = samplesAt(this.machine.plan, place);
    const usual: Record<string, Given> = {};
    for (const sample of samples) for (const [part, given] of Object.entries(sample)) usual[part] ??= given;
    const all = samples.map((sample) =>
      Object.fromEntries(
        prompt.parts.flatMap(({ key: part, optional }) => {
          const given = sample[part] ?? (optional ? undefined : usual[part]);
          return given === undefined ? [] : [[part, given]];
        }),
      ),
    );
    this.taps.set(key, all);
    return all;
  }
}
