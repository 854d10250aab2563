"use client";
import { useFieldArray, useFormContext } from "react-hook-form";
import { deliverySchema, type PlacedKind, placedKinds } from "#lib/submittal";
import { AutosaveForm } from "../../../../../_components/form/autosave-form";
import { type Choice, ChoiceField } from "../../../../../_components/form/choice-field";
import { freshId } from "../../../../../_components/form/fresh-id";
import type { DocumentStart } from "../../../../../_components/form/start-of";
import { TextField } from "../../../../../_components/form/text-field";
import { TextListField } from "../../../../../_components/form/text-list-field";
import { saveDocument } from "../../../_actions/save-document";
import grid from "../../../_components/field-grid.module.css";
import { useUndo } from "../../../_components/use-undo";
import styles from "../../_components/values-list.module.css";
import {
  type DeliveryValues,
  filledTicket,
  type ReadingValues,
  type TicketValues,
} from "../../_register/delivery-values";

const moistureBases = [
  { value: "wet mass", label: "of the wet mass" },
  { value: "dry mass", label: "of the dry mass" },
];

/** Tickets, infill depths and what was looked at while the work was placed. */
export function DeliveryForm({
  start,
  components,
}: {
  start: DocumentStart<DeliveryValues>;
  /** Infill of the bid that was taken. */
  components: readonly Choice[];
}) {
  return (
    <AutosaveForm schema={deliverySchema} {...start} save={saveDocument} label="Deliveries and placing">
      <section aria-labelledby="tickets">
        <h2 id="tickets">Truck and bag tickets</h2>
        {components.length === 0 ? (
          <p>Say first whose bid was taken: its infill is what tickets are for.</p>
        ) : (
          <Tickets components={components} />
        )}
        <div className={grid.fields}>
          <TextField
            name="massTolerance"
            label="Mass may differ by"
            hint="Share of what was bid"
            dimension="fraction"
          />
          <TextField
            name="mostMoisture"
            label="Water, at most"
            hint="Where nobody measured it, of the wet mass"
            dimension="fraction"
          />
          <LeftOver components={components} />
        </div>
      </section>
      <section aria-labelledby="depths">
        <h2 id="depths">Infill depths as placed</h2>
        <p>
          Read at places chosen without regard to what lies there. Depths on a map of the field belong to a field test.
        </p>
        <div className={grid.fields}>
          <TextField name="depthWanted" label="Depth wanted" dimension="length" />
          <TextField name="averageTolerance" label="Average may differ by" dimension="length" />
          <TextField name="placeTolerance" label="A single place by" dimension="length" />
        </div>
        <TextListField
          name="depths"
          label="Readings"
          hint="A column pasted into one of them fills the others."
          entry={(index) => `Depth ${index + 1}`}
          dimension="length"
        />
      </section>
      {(Object.keys(placedKinds) as PlacedKind[]).map((kind) => (
        <section key={kind} aria-labelledby={kind}>
          <h2 id={kind}>{placedKinds[kind].label}</h2>
          <Readings kind={kind} />
        </section>
      ))}
    </AutosaveForm>
  );
}

function Tickets({ components }: { components: readonly Choice[] }) {
  const { control, getValues } = useFormContext<DeliveryValues>();
  const { fields, append, insert, remove } = useFieldArray({ control, name: "tickets", keyName: "key" });
  const { keep, notice } = useUndo<TicketValues>((index, value) => insert(index, value));
  return (
    <>
      <ol className={styles.values}>
        {fields.map(({ key }, index) => (
          <li key={key} id={`tickets.${index}`}>
            <fieldset>
              <legend>Ticket {index + 1}</legend>
              <div className={grid.fields}>
                <TextField name={`tickets.${index}.number`} label="Number on the ticket" />
                <ChoiceField name={`tickets.${index}.component`} label="Infill" choices={components} />
                <TextField name={`tickets.${index}.bags`} label="Bags" hint="Empty for a truck" />
                <TextField
                  name={`tickets.${index}.mass`}
                  label="Mass"
                  hint="Of the load, or of one bag"
                  dimension="mass"
                />
                <TextField name={`tickets.${index}.moisture`} label="Water" hint="Empty: not measured" />
                <ChoiceField name={`tickets.${index}.moistureOf`} label="Water is a share" choices={moistureBases} />
              </div>
              <button
                type="button"
                className="plain screen-only"
                onClick={() => {
                  const value = structuredClone(getValues(`tickets.${index}`));
                  remove(index);
                  keep({ index, value, words: `ticket ${index + 1}` });
                }}
              >
                Remove<span className="visually-hidden"> ticket {index + 1}</span>
              </button>
            </fieldset>
          </li>
        ))}
      </ol>
      {notice}
      <p className="screen-only">
        <button
          type="button"
          onClick={() => {
            const component = getValues("tickets").at(-1)?.component ?? components[0]?.value ?? "";
            append(filledTicket({ component, mass: "" }), { focusName: `tickets.${fields.length}.number` });
          }}
        >
          Add a ticket
        </button>
      </p>
    </>
  );
}

/** What was left over of each infill and taken away again. */
function LeftOver({ components }: { components: readonly Choice[] }) {
  const { getValues } = useFormContext<DeliveryValues>();
  return getValues("leftOver").map(({ component }, index) => {
    const label = components.find(({ value }) => value === component)?.label;
    return label === undefined ? null : (
      <TextField
        key={component}
        name={`leftOver.${index}.mass`}
        label={`Left over: ${label}`}
        hint="Taken away again"
        dimension="mass"
      />
    );
  });
}

function Readings({ kind }: { kind: PlacedKind }) {
  const name = `placed.${kind}.readings` as const;
  const { control, getValues } = useFormContext<DeliveryValues>();
  const { fields, append, insert, remove } = useFieldArray({ control, name, keyName: "key" });
  const { keep, notice } = useUndo<ReadingValues>((index, value) => insert(index, value));
  const { reading } = placedKinds[kind];
  return (
    <>
      <div className={grid.fields}>
        {kind === "planarity" ? <TextField name="straightedge" label="Straightedge" /> : null}
        {kind === "lines" ? (
          <TextField name={`placed.${kind}.wanted`} label={`${reading} wanted`} dimension="length" />
        ) : null}
        <TextField
          name={`placed.${kind}.tolerance`}
          label={kind === "lines" ? "It may differ by" : `${reading}, at most`}
          dimension="length"
        />
      </div>
      <ol className={styles.values}>
        {fields.map(({ key }, index) => (
          <li key={key} id={`${name}.${index}`}>
            <fieldset>
              <legend>Place {index + 1}</legend>
              <div className={grid.fields}>
                <TextField name={`${name}.${index}.where`} label="Where" className={grid.wide} />
                <TextField name={`${name}.${index}.reading`} label={reading} dimension="length" />
                <TextField name={`${name}.${index}.note`} label="Remark" className={grid.wide} />
              </div>
              <button
                type="button"
                className="plain screen-only"
                onClick={() => {
                  const value = structuredClone(getValues(`${name}.${index}`));
                  remove(index);
                  keep({ index, value, words: `place ${index + 1}` });
                }}
              >
                Remove<span className="visually-hidden"> place {index + 1}</span>
              </button>
            </fieldset>
          </li>
        ))}
      </ol>
      {notice}
      <p className="screen-only">
        <button
          type="button"
          onClick={() => {
            const taken = getValues(name).map(({ id }) => id);
            append(
              { id: freshId("place", taken), where: "", reading: "", note: "" },
              {
                focusName: `${name}.${fields.length}.where`,
              },
            );
          }}
        >
          Add a place<span className="visually-hidden">: {placedKinds[kind].label}</span>
        </button>
      </p>
    </>
  );
}
