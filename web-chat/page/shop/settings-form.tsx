import { useId, useState } from 'preact/hooks';
import type { PersonWish } from '../../../engine/desk/types.ts';
import type { Settings, Units } from '../../../engine/index.ts';
import { postSettings } from '../office/net.ts';
import type { Save } from './shop-page.tsx';

interface SettingsProps {
  readonly settings: Settings;
  readonly people: readonly PersonWish[];
  readonly mine: boolean;
  readonly save: Save;
}
/** In force for jobs that begin from now on: each job has its own on the record. */
export function SettingsForm({ settings, people, mine, save }: SettingsProps) {
  const id = useId();
  const [wish, setWish] = useState(settings);
  const units: Units = wish.units ?? { temperature: '°F', pressure: 'psig' };
  const set = (part: Partial<Settings>) => setWish({ ...wish, ...part });
  const [minutes, setMinutes] = useState(String(settings.minutes ?? ''));
  const { minutes: _, ...rest } = wish;
  const wished: Settings = minutes.trim() === '' ? rest : { ...rest, minutes: Number(minutes) };
  const tell = (one: string): void => {
    const now = wish.toldOfStock ?? people.flatMap((p) => (p.active && p.roles.includes('dispatcher') ? [p.id] : []));
    set({ toldOfStock: now.includes(one) ? now.filter((id) => id !== one) : [...now, one] });
  };
  return (
    <section aria-label="Settings">
      <form
        class="give"
        onSubmit={(event) => {
          event.preventDefault();
          void save({ what: 'settings', wrong: wrongIn(wished), send: () => postSettings(wished) });
        }}
      >
        <h2>Settings, for jobs from now on</h2>
        <label for={`${id}-hertz`}>Supply frequency, Hz</label>
        <select
          id={`${id}-hertz`}
          value={wish.hertz}
          disabled={!mine}
          onChange={(e) => set({ hertz: e.currentTarget.value === '50' ? '50' : '60' })}
        >
          <option value="60">60</option>
          <option value="50">50</option>
        </select>
        <label for={`${id}-rule`}>Verdicts</label>
        <select
          id={`${id}-rule`}
          value={wish.rule}
          disabled={!mine}
          onChange={(e) => set({ rule: e.currentTarget.value === 'plain' ? 'plain' : 'doubt' })}
        >
          <option value="doubt">With the meter’s doubt, four ways</option>
          <option value="plain">In or out by the label alone</option>
        </select>
        <label for={`${id}-degrees`}>
          Temperatures <small>asked for and kept in °F; another unit is shown beside</small>
        </label>
        <select
          id={`${id}-degrees`}
          value={units.temperature}
          disabled={!mine}
          onChange={(e) => set({ units: { ...units, temperature: e.currentTarget.value as Units['temperature'] } })}
        >
          <option>°F</option>
          <option>°C</option>
        </select>
        <label for={`${id}-pressure`}>
          Pressures <small>asked for and kept in psig</small>
        </label>
        <select
          id={`${id}-pressure`}
          value={units.pressure}
          disabled={!mine}
          onChange={(e) => set({ units: { ...units, pressure: e.currentTarget.value as Units['pressure'] } })}
        >
          <option>psig</option>
          <option>kPa</option>
          <option>bar</option>
        </select>
        <label for={`${id}-number`}>Emergency number</label>
        <input
          id={`${id}-number`}
          value={wish.emergencyNumber}
          readOnly={!mine}
          maxLength={40}
          onInput={(e) => set({ emergencyNumber: e.currentTarget.value })}
        />
        <label for={`${id}-region`}>Region, shown beside it</label>
        <input
          id={`${id}-region`}
          value={wish.region ?? ''}
          readOnly={!mine}
          maxLength={60}
          onInput={(e) => set({ region: e.currentTarget.value })}
        />
        <label for={`${id}-minutes`}>
          Proof of dead stands, minutes <small>5 to 30; empty: as the manual says</small>
        </label>
        <input
          id={`${id}-minutes`}
          inputMode="numeric"
          value={minutes}
          readOnly={!mine}
          onInput={(e) => setMinutes(e.currentTarget.value)}
        />
        <label class="pick">
          <input
            type="checkbox"
            checked={wish.tagWithExtraMeasure}
            disabled={!mine}
            onChange={() => set({ tagWithExtraMeasure: !wish.tagWithExtraMeasure })}
          />
          <span>A tag with one extra measure, where no lock fits</span>
        </label>
        <fieldset class="part">
          <legend>Told of low stock in the team’s chat</legend>
          <div class="picks">
            {people
              .filter(({ active }) => active)
              .map(({ id: one, name, roles }) => (
                <label key={one} class="pick">
                  <input
                    type="checkbox"
                    checked={wish.toldOfStock?.includes(one) ?? roles.includes('dispatcher')}
                    disabled={!mine}
                    onChange={() => tell(one)}
                  />
                  <span>{name}</span>
                </label>
              ))}
          </div>
        </fieldset>
        {mine && (
          <button type="submit" class="key main">
            Save the settings
          </button>
        )}
      </form>
    </section>
  );
}

function wrongIn({ minutes, emergencyNumber }: Settings): string | null {
  if (emergencyNumber.trim() === '')
    return 'The emergency number stands on every emergency: type the one of your region.';
  if (minutes !== undefined && !(Number.isInteger(minutes) && minutes >= 5 && minutes <= 30))
    return 'How long a proof of dead stands: whole minutes from 5 to 30, or nothing for what the manual says.';
  return null;
}
