"use client";
import { useId } from "react";
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
type Member = Readonly<{ id: string; name: string }>;

const roleIds = Object.keys(roles) as RoleId[];

/** The list of people. A person is known by an id that follows from the name, until they have handed in a scoresheet. */
export function PeopleForm({
  where,
  version,
  values,
  draft,
  fixed,
  members,
}: {
  where: DocumentAddress;
  version: number;
  values: Values;
  draft: Draft<Values> | null;
  /** Ids of those who have handed in a scoresheet: they stay, under their name. */
  fixed: readonly string[];
  /** Those who sign in and may be listed; null where nobody signs in and any name may be. */
  members: readonly Member[] | null;
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
      <People fixed={fixed} members={members} />
    </AutosaveForm>
  );
}

function People({ fixed, members }: { fixed: readonly string[]; members: readonly Member[] | null }) {
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
            <PersonFields index={index} isFixed={fixed.includes(id)} members={members} remove={() => takeOut(index)} />
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

function PersonFields({
  index,
  isFixed,
  members,
  remove,
}: {
  index: number;
  isFixed: boolean;
  members: readonly Member[] | null;
  remove: () => void;
}) {
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
      ) : members !== null ? (
        <MemberField index={index} members={members} />
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

/** One of those who sign in. Somebody who is listed and does not sign in here, as after an import, stays until replaced. */
function MemberField({ index, members }: { index: number; members: readonly Member[] }) {
  const at = `people.${index}` as const;
  const { control, setValue, formState } = useFormContext<Values>();
  const [id, name] = useWatch({ control, name: [`${at}.id`, `${at}.name`] });
  const field = useId();
  const problem = problemAt(formState.errors, `${at}.name`);
  const choose = (chosen: string) => {
    const member = members.find((one) => one.id === chosen);
    if (member === undefined) return;
    setValue(`${at}.id`, member.id, { shouldDirty: true });
    setValue(`${at}.name`, member.name, { shouldDirty: true, shouldValidate: true });
  };
  const isMember = members.some((member) => member.id === id);
  return (
    <div className={styles.member} data-problem={problem === null ? undefined : ""}>
      <label htmlFor={field}>Person {index + 1}</label>
      <select id={field} value={isMember ? id : ""} onChange={({ target }) => choose(target.value)}>
        {isMember ? null : (
          <option value="">{name === "" ? "Choose a member" : `${name}, who does not sign in here`}</option>
        )}
        {members.map((member) => (
          <option key={member.id} value={member.id}>
            {member.name}
          </option>
        ))}
      </select>
      {problem === null ? null : <p className={styles.problem}>{problem}</p>}
    </div>
  );
}

function followName(target: EventTarget, follow: (text: string) => void): void {
  if (target instanceof HTMLInputElement) follow(target.value);
}
