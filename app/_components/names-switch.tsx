import { chooseNames } from "./choose-names";
import styles from "./units-switch.module.css";

/** Hides bidders behind their letters on every page, so that figures are read before names; works without script. */
export function NamesSwitch({ names }: { names: "shown" | "hidden" }) {
  return (
    <form action={chooseNames} className={`${styles.switch} screen-only`}>
      <input type="hidden" name="names" value={names === "shown" ? "hidden" : "shown"} />
      {names === "shown" ? null : <span>Bidders by letter alone</span>}
      <button type="submit" className="plain">
        {names === "shown" ? "Hide bidders’ names" : "Show bidders’ names"}
      </button>
    </form>
  );
}
