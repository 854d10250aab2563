"use client";
import { useFieldArray, useFormContext, useWatch } from "react-hook-form";
import { idOfName } from "#lib/access";
import { peopleSchema, type RoleId, roles } from "#lib/people";
import { AutosaveForm } from "../../../../../_components/form/autosave-form";
import { problemAt } from "../../../../../_components/form/problem-at";
import type { DocumentAddress } from "../../../../../_components/form/save-outcome";
import type { Draft } from "../../../../../_components/form/start-of";
import { TextField } from "../../../../../_components/form/text-field";
import { capitalised } from "../../../../../_components/in-words";
import { saveDocument } from "../../../_actions/save-document";
import { useUndo } from "../../../_components/use-undo";
import styles from "./people.module.css";

type PersonText = Readonly<{ id: string; name: string; position: string; roles: RoleId[] }>;
type Values = { people: PersonText[] };

const roleIds = Object.keys(roles) as RoleId[];

/** The list of people. A person is known by an id that follows from the name, until they have handed in a scoresheet. */
export function PeopleForm({
  where,
  version,
  values,
  draft,
  fixed,
}: {
  where: DocumentAddress;
  version: number;
  values: Values;
  draft: Draft<Values> | null;
  /** Ids of those who have handed in a scoresheet: they stay, under their name. */
  fixed: readonly string[];
}) {
  return (
    <AutosaveForm<Values>
      schema={peopleSchema as never}
      where={where}
      version={version}
      values={values}
      draft={draft}
      save={saveDocument}
      label="People"
    >
      <People fixed={fixed} />
    </AutosaveForm>
  );
}

function People({ fixed }: { fixed: readonly string[] }) {
  const { control, getValues } = useFormContext<Values>();
  const { fields, append, insert, remove } = useFieldArray({ control, name: "people", keyName: "key" });
  const { keep, notice } = useUndo<PersonText>(insert);
  const takeOut = (index: number) => {
    const value = getValues(`people.${index}`);
    remove(index);
    keep({ index, value, words: value.name || "person" });
  };
  return (
    <>
      {fields.length === 0 ? <p>Nobody is listed yet.</p> : null}
      <ol className={styles.people}>
        {fields.map(({ key, id }, index) => (
          <li key={key}>
            <PersonFields index={index} isFixed={fixed.includes(id)} remove={() => takeOut(index)} />
          </li>
        ))}
      </ol>
      {notice}
      <button
        type="button"
        onClick={() =>
          append({ id: idOfName(""), name: "", position: "", roles: [] }, { focusName: `people.${fields.length}.name` })
        }
      >
        Add a person
      </button>
    </>
  );
}

function PersonFields({ index, isFixed, remove }: { index: number; isFixed: boolean; remove: () => void }) {
  const at = `people.${index}` as const;
  const { control, setValue, register, formState } = useFormContext<Values>();
  const [name, held] = useWatch({ control, name: [`${at}.name`, `${at}.roles`] });
  const problem = problemAt(formState.errors, `${at}.roles`);
  return (
    <fieldset className={styles.person}>
      <legend className="visually-hidden">{name === "" ? `Person ${index + 1}` : name}</legend>
      {isFixed ? (
        <p className={styles.fixed}>
          <strong>{name}</strong> has handed in a scoresheet and stays on the list.
        </p>
      ) : (
        // the id follows the name as long as nothing rests on it
        <div onInput={({ target }) => followName(target, (text) => setValue(`${at}.id`, idOfName(text)))}>
          <TextField name={`${at}.name`} label={`Name of person ${index + 1}`} />
        </div>
      )}
      <input type="hidden" {...register(`${at}.id`)} />
      <TextField name={`${at}.position`} label={`Office of person ${index + 1}`} hint="Such as “athletic director”." />
      <fieldset className={styles.roles} data-problem={problem === null ? undefined : ""}>
        <legend>Roles</legend>
        {problem === null ? null : <p className={styles.problem}>{problem}</p>}
        {roleIds.map((role) => (
          <label key={role}>
            <input
              type="checkbox"
              checked={held.includes(role)}
              disabled={isFixed && role === "evaluator"}
              onChange={({ target }) =>
                setValue(
                  `${at}.roles`,
                  roleIds.filter((each) => (each === role ? target.checked : held.includes(each))),
                )
              }
            />{" "}
            {capitalised(roles[role].label)}
          </label>
        ))}
      </fieldset>
      {isFixed ? null : (
        <button type="button" className="plain" onClick={remove}>
          Remove<span className="visually-hidden"> person {index + 1}</span>
        </button>
      )}
    </fieldset>
  );
}

function followName(target: EventTarget, follow: (text: string) => void): void {
  if (target instanceof HTMLInputElement) follow(target.value);
}
