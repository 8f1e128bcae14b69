/**
 * What a flow is written in. Every constructor returns plain data: no functions, so a flow can be hashed, drawn, walked
 * and sent to a browser. Targets and references are typed: a misspelt step, exit, outcome or judgement doesn't compile.
 *
 * Targets: a step of the same page, or `!exit`. References: a step of the same page, a need of the page, `@name` (a fact
 * of the whole job, `@round:name` of one round, `@cabinet:name` of one cabinet), `~step` (the same step in the nearest
 * earlier try that has it).
 */
import type { JudgementId, LimitsOf, OutcomeOf, TakesOf } from './judgements/index.ts';
import type { Limit } from './judgements/judgement.ts';
import type { Leads, Probes } from './picture/data.ts';
import type { Circuit, Quantity } from './quantity.ts';
import type { Callout, Equipment, Hazard } from './schema.ts';

export type { Leads, Limit };
/** `phone`: a call-back number. `place`: where the unit stands. `unit`: its make, model or marking. */
export type Finds = 'phone' | 'place' | 'unit';

/** The closed list of acts. Each puts hands inside, so each asks for a standing isolation. */
export type ActName = 'wires off' | 'spin' | 'tug' | 'fit' | 'rewire' | 'part out';
export type Target<S extends string, X extends string> = S | `!${X}`;
export type Ref<S extends string, N extends string> = S | N | `@${string}` | `~${S}`;

/**
 * A part that is asked only sometimes. `part`: another part of the same question; `fact`: an earlier answer. `is` wants one
 * of these said, `not` none of them, which holds where nothing was said.
 */
export type When<R extends string> =
  | { readonly part: string; readonly is: readonly string[] }
  | { readonly fact: R; readonly part: string; readonly is?: readonly string[]; readonly not?: readonly string[] }
  | { readonly fact: R; readonly part: string; readonly above: Limit; readonly below?: Limit }
  /** Only when the isolation is entered again after its age alone. */
  | { readonly again: true }
  /** Unless that look shows a capacitor with two terminals, so one section. */
  | { readonly fact: R; readonly part: 'terminals'; readonly unless: 'two' };

interface PartBase<R extends string> {
  readonly ask: string;
  readonly optional?: boolean;
  /** May be left out where this earlier answer has the same part: a repeat of one section repeats that one. */
  readonly unless?: R;
  readonly when?: When<R>;
  /** Kept as a fact of the whole job under this name; a question whose parts are all known so is passed over. */
  readonly as?: string;
  /** Kept under its name as it was read last, and asked anew all the same: nothing fills it in. */
  readonly anew?: true;
  readonly words?: readonly string[];
}
export interface FieldPart<R extends string = string> extends PartBase<R> {
  readonly part: 'field';
  readonly quantity: Quantity;
  readonly over: boolean;
  readonly unitNeeded: boolean;
  readonly signed: boolean;
  /** While the control circuit is live: above this the isolation ends. Unsaid, what holds for the cabinet. */
  readonly most?: Limit;
}
export interface OptionSpec {
  readonly label: string;
  /** Contradicts every other option of the same part. */
  readonly alone?: boolean;
  readonly words?: readonly string[];
  /** Whoever chooses it reports a danger: the alarm goes on the record with the answer. */
  readonly hazard?: Hazard;
}
export interface ChoosePart<R extends string = string> extends PartBase<R> {
  readonly part: 'choose';
  readonly several: boolean;
  readonly options: Readonly<Record<string, OptionSpec>>;
}
export interface PlainPart<R extends string = string> extends PartBase<R> {
  readonly part: 'confirm' | 'act' | 'label' | 'photo' | 'note';
  /** A label of a start part is a range; without it the print of a run part is asked for. */
  readonly start?: true;
  /** What the shop looks up while this is typed: open calls and units that it knows already. */
  readonly finds?: Finds;
  readonly options?: Readonly<Record<string, OptionSpec>>;
}
export type PartSpec<R extends string = string> = FieldPart<R> | ChoosePart<R> | PlainPart<R>;

/** A computed line shown with the question (hold time, energy): a judgement whose findings are printed. */
export interface Shown<R extends string = string> {
  readonly judgement: JudgementId;
  readonly of: Readonly<Record<string, R | null>>;
  readonly limits: Readonly<Record<string, Limit>>;
}

interface Said {
  readonly say: string;
  readonly body?: readonly string[];
  readonly why?: string;
  readonly source?: readonly string[];
  readonly callouts?: readonly Callout[];
  /** Shown with the question; no part of the fingerprint. */
  readonly picture?: Leads | Probes;
}
export type WhileOff = true | 'until-read';
export interface AskStep<T extends string = string, R extends string = string> extends Said {
  readonly verb: 'choose' | 'confirm' | 'act' | 'measure' | 'label' | 'photo' | 'note' | 'form';
  readonly circuit: Circuit;
  readonly act?: ActName;
  readonly parts: Readonly<Record<string, PartSpec<R>>>;
  readonly next?: T;
  /** Where an answer decides the way: option id → target, by the part named. */
  readonly by?: string;
  readonly to?: Readonly<Record<string, T>>;
  /**
   * Where "can't", "not sure" and "skip" lead. Without it they lead to `next`; of a yes or no, where no leads. A choice has
   * no such way unless one of its options takes "not sure".
   */
  readonly cant?: T;
  /** That it can’t be answered is an answer like another: no senior is asked to look at that. */
  readonly mayLack?: true;
  /**
   * It holds only as long as the power stays off: where that came back it is asked again. `until-read`: unless what it
   * was asked for, a dead reading of its page, has been taken.
   */
  readonly whileOff?: WhileOff;
  /** The yes says that so many minutes are over since an answer that said `now`: by the record's times no sooner. */
  readonly waits?: { readonly since: R; readonly least: Limit };
  /** Agreed for one live sitting: after an emergency, a stop, a hand-over or power that came back it is agreed on anew. */
  readonly sitting?: true;
  /** Options with which the lock comes off and power goes on: they end every isolation. */
  readonly powers?: readonly string[];
  readonly restsOn?: readonly R[];
  readonly shows?: readonly Shown<R>[];
  /** What was noted or photographed earlier, shown again with this question, by what it is called. It decides nothing. */
  readonly recalls?: Readonly<Record<string, R>>;
  /**
   * Facts of the whole job, by their `as`, that are about the part which this act takes out: done, they are forgotten for
   * the rounds to come. Its own round keeps them as they stood.
   */
  readonly renews?: readonly string[];
  /** Exempt from skipping: a gate outside make-dead (an act's confirmation is one by itself). */
  readonly gate?: boolean;
}
export interface JudgeStep<T extends string = string, R extends string = string> {
  readonly verb: 'judge';
  readonly judgement: JudgementId;
  readonly of: Readonly<Record<string, R | null>>;
  readonly limits: Readonly<Record<string, Limit>>;
  readonly then: Readonly<Record<string, T>>;
  /** What the person reads, before the next question, where the outcome needs a word. */
  readonly says?: Readonly<Record<string, string>>;
  /** Outcomes whose findings nobody has to read before the next question. They stay on the record. */
  readonly quiet?: readonly string[];
}
/** Goes by the verdicts passed so far in this round: the first group that has one of its ids decides. */
export interface FoundStep<T extends string = string> {
  readonly verb: 'found';
  /**
   * Group → ids of verdicts, in the order in which they take precedence. `block/run/section-open` is that verdict where it
   * stands within these includes: of two parts of one kind, which one it was.
   */
  readonly among: Readonly<Record<string, readonly string[]>>;
  readonly to: Readonly<Record<string, T>>;
}
export interface VerdictStep<T extends string = string, R extends string = string> {
  readonly verb: 'verdict';
  readonly verdict: string;
  readonly title: string;
  readonly says: readonly string[];
  readonly next: readonly string[];
  readonly who: 'junior' | 'senior' | 'certified';
  /** Judge steps whose findings are printed, and answers it rests on. */
  readonly judged: readonly R[];
  readonly evidence: readonly R[];
  readonly raises?: 'not-covered' | 'verdict';
  readonly then: T;
}
/** Rests until a senior or owner approves. */
export interface ApprovalStep<T extends string = string> extends Said {
  readonly verb: 'approval';
  readonly what: 'lock-alternative';
  readonly next: T;
}
export interface IncludeStep<T extends string = string, R extends string = string> {
  readonly verb: 'include';
  // biome-ignore lint/suspicious/noExplicitAny: pages of every shape are included; exits and needs are typed at the call.
  readonly page: Flow<any, any, any>;
  readonly exits: Readonly<Record<string, T>>;
  readonly needs: Readonly<Record<string, R>>;
  readonly again?: { readonly times: number; readonly spent: T };
  readonly round?: boolean;
  /** Hands go into this cabinet of the manual: its own isolation, its own `@cabinet:` facts. Unsaid: as around it. */
  readonly cabinet?: string;
}
export type Step<T extends string = string, R extends string = string> =
  | AskStep<T, R>
  | JudgeStep<T, R>
  | VerdictStep<T, R>
  | FoundStep<T>
  | ApprovalStep<T>
  | IncludeStep<T, R>;

/** A worked call, typed as a technician would, that runs as a test and is printed with its page. */
export interface Example {
  readonly title: string;
  /** What the unit's own record says, where the call hangs on it. */
  readonly unit?: Partial<Equipment>;
  /** Each reply, from the observation on. */
  readonly lines: readonly string[];
  /** Ids of the verdicts on the record, in their order. */
  readonly then: readonly string[];
  /** The manual's ending that it reaches; none where it goes on. */
  readonly ends?: string;
}

/** A page of the manual. X its exits, N the facts it needs from outside, S its steps. */
export interface Flow<X extends string = string, N extends string = string, S extends string = string> {
  readonly id: string;
  readonly version: number;
  readonly title: string;
  readonly exits: readonly X[];
  readonly needs: readonly N[];
  readonly steps: Readonly<Record<S, Step>>;
  /** They show and prove the page, and change no prompt and no verdict: no part of the fingerprint. */
  readonly examples?: readonly Example[];
}

/** A page: first step first, every target further down. */
export function flow<const S extends string, const X extends string, const N extends string = never>(page: {
  readonly id: string;
  readonly version: number;
  readonly title: string;
  readonly exits: readonly X[];
  readonly needs?: readonly N[];
  readonly steps: { readonly [K in S]: Step<Target<NoInfer<S>, NoInfer<X>>, Ref<NoInfer<S>, NoInfer<N>>> };
  readonly examples?: readonly Example[];
}): Flow<X, N, S> {
  return { ...page, needs: page.needs ?? [] } as unknown as Flow<X, N, S>;
}

// ------------------------------------------------------------------------------------------------------------- asks

/** One option of several; the answer decides the way. */
export const choose = <const T extends string, const R extends string = never>(
  spec: Said & {
    readonly options: Readonly<Record<string, OptionSpec & { readonly to: T }>>;
    /** Where "can't" and "not sure" lead, where no option takes them: never the way of a good finding. */
    readonly cant?: T;
    readonly as?: string;
    readonly anew?: true;
    readonly whileOff?: WhileOff;
    readonly sitting?: true;
    readonly powers?: readonly string[];
    readonly restsOn?: readonly R[];
    readonly shows?: readonly Shown<R>[];
  },
): AskStep<T, R> => {
  const { options, as, anew, ...rest } = spec;
  const bare = Object.fromEntries(Object.entries(options).map(([k, { to: _, ...o }]) => [k, o]));
  const part: ChoosePart<R> = {
    part: 'choose',
    ask: spec.say,
    several: false,
    options: bare,
    ...(as ? { as } : {}),
    ...(anew ? { anew } : {}),
  };
  return {
    verb: 'choose',
    circuit: 'none',
    ...rest,
    parts: { choice: part },
    by: 'choice',
    to: Object.fromEntries(Object.entries(options).map(([k, o]) => [k, o.to])),
  };
};

interface YesNo<T extends string, R extends string> extends Said {
  readonly yes: string;
  /** Other words for it. */
  readonly words?: readonly string[];
  readonly no?: { readonly label: string; readonly words?: readonly string[]; readonly to: T };
  readonly cant?: { readonly label: string; readonly words?: readonly string[]; readonly to: T };
  /** What is neither yes nor no, each with its own way. */
  readonly others?: Readonly<
    Record<string, { readonly label: string; readonly words?: readonly string[]; readonly to: T }>
  >;
  /** Where "can't" and "not sure" lead, where that is neither `cant` nor what no says. */
  readonly unsure?: T;
  readonly next: T;
  readonly whileOff?: WhileOff;
  readonly sitting?: true;
  readonly powers?: readonly string[];
  readonly waits?: { readonly since: R; readonly least: Limit };
  readonly restsOn?: readonly R[];
  readonly recalls?: Readonly<Record<string, R>>;
  readonly as?: string;
}
const option = (label: string, words?: readonly string[]): OptionSpec => ({ label, ...(words ? { words } : {}) });
const yesNo = <T extends string, R extends string>(
  spec: YesNo<T, R>,
  yesId: 'yes' | 'done',
  part: 'confirm' | 'act',
): Pick<AskStep<T, R>, 'parts' | 'by' | 'to' | 'cant'> => ({
  ...(spec.unsure ? { cant: spec.unsure } : {}),
  parts: {
    ok: {
      part,
      ask: spec.say,
      ...(spec.as ? { as: spec.as } : {}),
      options: {
        [yesId]: option(spec.yes, spec.words),
        ...Object.fromEntries(Object.entries(spec.others ?? {}).map(([id, o]) => [id, option(o.label, o.words)])),
        ...(spec.no ? { no: option(spec.no.label, spec.no.words) } : {}),
        ...(spec.cant ? { cant: option(spec.cant.label, spec.cant.words) } : {}),
      },
    },
  },
  by: 'ok',
  to: {
    [yesId]: spec.next,
    ...Object.fromEntries(Object.entries(spec.others ?? {}).map(([id, o]) => [id, o.to])),
    ...(spec.no ? { no: spec.no.to } : {}),
    ...(spec.cant ? { cant: spec.cant.to } : {}),
  },
});

/** Yes, and where it matters no or can't. */
export const confirm = <const T extends string, const R extends string = never>(spec: YesNo<T, R>): AskStep<T, R> => {
  const { yes: _y, words: _w, no: _n, cant: _c, others: _o, unsure: _u, next: _x, as: _a, ...said } = spec;
  return { verb: 'confirm', circuit: 'none', ...said, ...yesNo(spec, 'yes', 'confirm') };
};

/** Hands inside. */
export const act = <const T extends string, const R extends string = never>(
  name: ActName,
  spec: YesNo<T, R> & { readonly also?: Readonly<Record<string, PartSpec<R>>>; readonly renews?: readonly string[] },
): AskStep<T, R> => {
  const { yes: _y, words: _w, no: _n, cant: _c, others: _o, unsure: _u, next: _x, as: _a, also, ...said } = spec;
  const core = yesNo(spec, 'done', 'act');
  return { verb: 'act', circuit: 'part', act: name, ...said, ...core, parts: { ...(also ?? {}), ...core.parts } };
};

interface Asked<T extends string, R extends string> extends Said {
  readonly next: T;
  readonly cant?: T;
  readonly mayLack?: true;
  readonly restsOn?: readonly R[];
  readonly shows?: readonly Shown<R>[];
  readonly gate?: boolean;
}
/** Readings of a meter. The circuit and the fields' quantities decide the step's class. */
export const measure = <const T extends string, const R extends string = never>(
  spec: Asked<T, R> & { readonly circuit: Circuit; readonly fields: Readonly<Record<string, PartSpec<R>>> },
): AskStep<T, R> => {
  const { fields, ...rest } = spec;
  return { verb: 'measure', ...rest, parts: fields };
};
/** Several kinds of parts in one question, nothing measured on a circuit. */
export const form = <const T extends string, const R extends string = never>(
  spec: Asked<T, R> & { readonly parts: Readonly<Record<string, PartSpec<R>>> },
): AskStep<T, R> => ({ verb: 'form', circuit: 'none', ...spec });

/** The print on a part, typed as on the label; with `as` kept for the whole job under that name. */
export const label = <const T extends string, const R extends string = never>(
  spec: Asked<T, R> & { readonly as?: string; readonly start?: true },
): AskStep<T, R> => {
  const { as, start, ...rest } = spec;
  const print: PlainPart<R> = { part: 'label', ask: spec.say, ...(as ? { as } : {}), ...(start ? { start } : {}) };
  return { verb: 'label', circuit: 'none', ...rest, parts: { print } };
};
/** A photo as a question of its own. @public */
export const photo = <const T extends string, const R extends string = never>(spec: Asked<T, R>): AskStep<T, R> => ({
  verb: 'photo',
  circuit: 'none',
  ...spec,
  parts: { photo: { part: 'photo', ask: spec.say } },
});
export const note = <const T extends string, const R extends string = never>(spec: Asked<T, R>): AskStep<T, R> => ({
  verb: 'note',
  circuit: 'none',
  ...spec,
  parts: { note: { part: 'note', ask: spec.say } },
});

// ------------------------------------------------------------------------------------------------------ judge, verdict

/** A named computation decides the way. Every outcome has a target. */
export const judge = <
  const Id extends JudgementId,
  const Of extends Readonly<Record<TakesOf<Id>, string | null>>,
  const Then extends Readonly<Record<OutcomeOf<Id>, string>>,
>(
  judgement: Id,
  spec: {
    readonly of: Of;
    readonly limits: Readonly<Record<LimitsOf<Id>, Limit>>;
    readonly then: Then;
    readonly says?: Readonly<Partial<Record<OutcomeOf<Id>, string>>>;
    readonly quiet?: readonly OutcomeOf<Id>[];
  },
): JudgeStep<Then[keyof Then] & string, Exclude<Of[keyof Of], null> & string> =>
  ({ verb: 'judge', judgement, ...spec }) as unknown as JudgeStep<
    Then[keyof Then] & string,
    Exclude<Of[keyof Of], null> & string
  >;

/** Shown with a question, decides nothing. */
export const shown = <const Id extends JudgementId, const Of extends Readonly<Record<TakesOf<Id>, string | null>>>(
  judgement: Id,
  spec: { readonly of: Of; readonly limits: Readonly<Record<LimitsOf<Id>, Limit>> },
): Shown<Exclude<Of[keyof Of], null> & string> => ({ judgement, ...spec }) as never;

export const verdict = <const T extends string, const R extends string = never>(
  spec: Omit<VerdictStep<T, R>, 'verb'>,
): VerdictStep<T, R> => ({ verb: 'verdict', ...spec });

/** What was found on the way decides where to go on: a block of tests is finished, then its findings are seen to. */
export const found = <const T extends string>(spec: {
  readonly among: Readonly<Record<string, { readonly verdicts: readonly string[]; readonly to: T }>>;
  readonly none: T;
}): FoundStep<T> => ({
  verb: 'found',
  among: Object.fromEntries(Object.entries(spec.among).map(([group, g]) => [group, g.verdicts])),
  to: { ...Object.fromEntries(Object.entries(spec.among).map(([group, g]) => [group, g.to])), none: spec.none },
});

export const approval = <const T extends string>(spec: Omit<ApprovalStep<T>, 'verb'>): ApprovalStep<T> => ({
  verb: 'approval',
  ...spec,
});

/** Puts a page in place. With `again`, the page's exit `again` leads to the next copy, and after the last to `spent`. */
export const include = <
  const X extends string,
  const N extends string,
  const E extends Readonly<Record<Exclude<X, A extends undefined ? never : 'again'>, string>>,
  const M extends Readonly<Record<N, string>>,
  const A extends { readonly times: number; readonly spent: string } | undefined = undefined,
>(
  page: Flow<X, N, string>,
  spec: {
    readonly exits: E;
    readonly needs: M;
    readonly again?: A;
    readonly round?: boolean;
    readonly cabinet?: string;
  },
): IncludeStep<(E[keyof E] & string) | (A extends { spent: infer P } ? P & string : never), M[keyof M] & string> =>
  ({ verb: 'include', page, ...spec }) as never;

// ------------------------------------------------------------------------------------------------------------ fields

type FieldOptions<R extends string> = {
  readonly words?: readonly string[];
  readonly optional?: boolean;
  readonly unless?: R;
  readonly when?: When<R>;
  readonly as?: string;
  readonly anew?: true;
  /** False: only a number will do. */
  readonly over?: boolean;
  readonly unitNeeded?: boolean;
  readonly signed?: boolean;
  readonly most?: Limit;
};
/** What a meter may show OL for; a thermometer, a gauge and a clock don't. */
const OVER: readonly Quantity[] = ['capacitance', 'voltage', 'current', 'resistance', 'insulation'];
const field =
  (quantity: Quantity) =>
  <const R extends string = never>(ask: string, o: FieldOptions<R> = {}): FieldPart<R> => ({
    part: 'field',
    ask,
    quantity,
    over: o.over ?? OVER.includes(quantity),
    unitNeeded: o.unitNeeded ?? false,
    signed: o.signed ?? false,
    ...(o.words ? { words: o.words } : {}),
    ...(o.optional ? { optional: true } : {}),
    ...(o.unless ? { unless: o.unless } : {}),
    ...(o.when ? { when: o.when } : {}),
    ...(o.as ? { as: o.as } : {}),
    ...(o.anew ? { anew: true } : {}),
    ...(o.most ? { most: o.most } : {}),
  });
export const microfarads = field('capacitance');
export const volts = field('voltage');
export const amps = field('current');
export const ohms = field('resistance');
export const megohms = field('insulation');
export const count = field('count');
export const hours = field('hours');
/** A temperature, °F; °C is taken too. */
export const degrees = field('temperature');
/** Above the atmosphere, psig. */
export const psig = field('pressure');
/** Relative humidity, %. */
export const humidity = field('humidity');
/** Between two temperatures, °F. */
export const degreesApart = field('difference');

type Pair = readonly [from: string, to: string, good?: string];
/** A picture of where the leads go between points that have names. */
export const probes = (mode: Probes['mode'], ...on: readonly Pair[]): Probes => ({
  kind: 'probes',
  mode,
  on: on.map(([from, to, good]) => ({ from, to, ...(good === undefined ? {} : { good }) })),
});

/** The same where not every pair is asked of every unit: by the part of the question that a pair belongs to. */
export const probesOf = (mode: Probes['mode'], on: Readonly<Record<string, Pair>>): Probes => ({
  kind: 'probes',
  mode,
  on: Object.entries(on).map(([part, [from, to, good]]) => ({
    part,
    from,
    to,
    ...(good === undefined ? {} : { good }),
  })),
});

type ChooseOptions<R extends string> = { readonly optional?: boolean; readonly when?: When<R>; readonly as?: string };
type NoteOptions<R extends string> = ChooseOptions<R> & { readonly finds?: Finds };
const chooser =
  (several: boolean) =>
  <const R extends string = never>(
    ask: string,
    options: Readonly<Record<string, OptionSpec>>,
    o: ChooseOptions<R> = {},
  ): ChoosePart<R> => ({ part: 'choose', ask, several, options, ...o });
export const one = chooser(false);
export const several = chooser(true);
export const printed = <const R extends string = never>(ask: string, o: ChooseOptions<R> = {}): PlainPart<R> => ({
  part: 'label',
  ask,
  ...o,
});
export const noted = <const R extends string = never>(ask: string, o: NoteOptions<R> = {}): PlainPart<R> => ({
  part: 'note',
  ask,
  ...o,
});
export const pictured = <const R extends string = never>(ask: string, o: ChooseOptions<R> = {}): PlainPart<R> => ({
  part: 'photo',
  ask,
  ...o,
});
export const sure = <const R extends string = never>(
  ask: string,
  yes: string,
  o: ChooseOptions<R> = {},
): PlainPart<R> => ({
  part: 'confirm',
  ask,
  options: { yes: { label: yes } },
  ...o,
});

// -------------------------------------------------------------------------------------------------- manual, isolation

/** What each way out of make-dead means. `proved` alone sets the isolation proved. */
export interface Leaving<S extends string = string> {
  /** This step and all after it are asked again. */
  readonly forget: S;
  readonly notice: string;
  /** The line counts as a try of the job; after `times` the job is held until a senior or owner opens as many again. */
  readonly tries?: { readonly times: number; readonly held: string };
}
export interface IsolationRules<X extends string = string, S extends string = string> {
  readonly page: Flow<X, string, S>;
  readonly leaving: Readonly<Record<Exclude<X, 'proved'>, Leaving<NoInfer<S>>>>;
  /** Where make-dead is entered again: after the age alone, after any other end, by a new holder. */
  readonly reentry: { readonly age: NoInfer<S>; readonly void: NoInfer<S>; readonly holder: NoInfer<S> };
  readonly minutes: Limit;
  /** The prompts that a straight way asks, for "being proved, n of m". */
  readonly prompts: readonly NoInfer<S>[];
  /** A fact of the job whose rise ends the isolation: one more capacitor than was proved discharged. */
  readonly grows?: { readonly step: NoInfer<S>; readonly part: string };
  /** Above this a reading while the control circuit is live ends the isolation: that is no control circuit. */
  readonly controlMost: Limit;
}
export const isolation = <const X extends string, const S extends string>(
  rules: IsolationRules<X, S>,
): IsolationRules<X, S> => rules;

export interface Manual {
  readonly id: string;
  readonly version: number;
  readonly title: string;
  // biome-ignore lint/suspicious/noExplicitAny: the shelf holds manuals of every shape.
  readonly root: Flow<any, never, any>;
  // biome-ignore lint/suspicious/noExplicitAny: as above.
  readonly isolation: IsolationRules<any, any>;
  /** Cabinets whose make-dead is another page: what holds a charge there is no capacitor with terminals. */
  // biome-ignore lint/suspicious/noExplicitAny: as above.
  readonly isolations?: Readonly<Record<string, IsolationRules<any, any>>>;
  readonly cabinets: Readonly<Record<string, string>>;
  /** Facts of the job that the unit's own record may bring, by name; other facts of it only fill the chips. */
  readonly fromRecord: readonly string[];
  /** Taken where a label prints none, in percent. */
  readonly labelTolerance: Limit;
  /** What each exit of the root means for the job. */
  readonly endings: Readonly<Record<string, { readonly title: string; readonly says: string }>>;
  /**
   * Questions to a caller, answered by somebody far from the unit: nothing is opened, and an alarm doesn't hold the record,
   * since the person on the line still has to say where they are. At these endings a call is opened on the shelf's first
   * manual.
   */
  readonly caller?: { readonly opens: readonly string[] };
}
export const manual = (of: Manual): Manual => of;
