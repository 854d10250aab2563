"use client";
import type { UnitSystem } from "#lib/quantity";
import { channelClasses } from "#lib/trace";
import styles from "../../_components/ask-form.module.css";
import type { TraceSettings } from "../../_tests/trace-reading";

/** What the method asks of the working-out. */
export function SettingFields({
  settings,
  change,
  units,
}: {
  settings: TraceSettings;
  change: (settings: TraceSettings) => void;
  units: UnitSystem;
}) {
  return (
    <fieldset>
      <legend>How it is worked out</legend>
      <div className={styles.form}>
        <div className={styles.field}>
          <label htmlFor="drop-height">Drop height, if stated</label>
          <input
            id="drop-height"
            autoComplete="off"
            placeholder={units === "us" ? "24 in" : "610 mm"}
            value={settings.dropHeight}
            onChange={({ target }) => change({ ...settings, dropHeight: target.value })}
          />
        </div>
        <div className={styles.field}>
          <label htmlFor="filter">Low-pass filter</label>
          <select
            id="filter"
            value={settings.filter}
            onChange={({ target }) =>
              change({ ...settings, filter: channelClasses.find((each) => `${each}` === target.value) ?? "unfiltered" })
            }
          >
            <option value="unfiltered">None: as it stands</option>
            {channelClasses.map((each) => (
              <option key={each} value={each}>
                Channel frequency class {each}
              </option>
            ))}
          </select>
        </div>
        <div className={styles.field}>
          <label htmlFor="lead-in">Before the impact</label>
          <select
            id="lead-in"
            value={settings.leadIn}
            onChange={({ target }) =>
              change({
                ...settings,
                leadIn: target.value === "free-fall" ? "free-fall" : "hanging-then-free-fall",
              })
            }
          >
            <option value="free-fall">The trace begins in free fall</option>
            <option value="hanging-then-free-fall">The missile hangs, then falls</option>
          </select>
        </div>
        <div className={styles.field}>
          <label htmlFor="criterion-window">Interval of the criterion</label>
          <select
            id="criterion-window"
            value={settings.criterionWindow}
            onChange={({ target }) =>
              change({ ...settings, criterionWindow: target.value as TraceSettings["criterionWindow"] })
            }
          >
            <option value="any-length">Of any length</option>
            <option value="15-ms">At most 15 ms</option>
            <option value="36-ms">At most 36 ms</option>
          </select>
        </div>
      </div>
    </fieldset>
  );
}
