import type { UnitSystem } from "#lib/quantity";
import { chooseUnits } from "./choose-units";
import styles from "./units-switch.module.css";

/** Changes the units of every page at once; works without script. */
export function UnitsSwitch({ units }: { units: UnitSystem }) {
  const other: UnitSystem = units === "us" ? "metric" : "us";
  return (
    <form action={chooseUnits} className={`${styles.switch} screen-only`}>
      <input type="hidden" name="units" value={other} />
      <span>{units === "us" ? "US customary units" : "Metric units"}</span>
      <button type="submit" className="plain">
        {other === "us" ? "Show US customary" : "Show metric"}
      </button>
    </form>
  );
}
