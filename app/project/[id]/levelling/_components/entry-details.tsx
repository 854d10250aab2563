"use client";
import { useEffect, useRef } from "react";
import { useFormContext, useWatch } from "react-hook-form";
import type { Plug } from "#lib/cost";
import { type Choice, ChoiceField } from "../../../../_components/form/choice-field";
import { KindField } from "../../../../_components/form/kind-field";
import { LongTextField } from "../../../../_components/form/long-text-field";
import { TextField } from "../../../../_components/form/text-field";
import { PlainPriceFields, startingPrice } from "../../_components/price/plain-price-fields";
import { lacksPrice } from "./entry-words";
import type { LevelledValues } from "./levelled-values";
import styles from "./levelling.module.css";
import type { LevelledBid } from "./scope-matrix";

const plugs: readonly Choice[] = [
  { value: "none", label: "Nothing yet" },
  { value: "figure", label: "A figure of the owner’s own" },
  { value: "median", label: "The median of what the other bids charge" },
  { value: "question", label: "A question to the bidder" },
];
const plugTemplates = {
  none: {},
  figure: { price: startingPrice },
  median: { quantity: "" },
  question: { asked: "" },
};

/** Everything about one item in one bid: where it stands, which line holds it, what stands in for its price. */
export function EntryDetails({
  index,
  item,
  bid,
  close,
}: {
  index: number;
  item: string;
  bid: LevelledBid;
  close: () => void;
}) {
  const { control } = useFormContext<LevelledValues>();
  const name = `levelling.${index}` as const;
  const entry = useWatch({ control, name });
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const lines: readonly Choice[] = [
    { value: "", label: "No line names it" },
    ...bid.lines.map(({ id, label }) => ({ value: id, label })),
  ];
  return (
    <section
      className={styles.details}
      aria-labelledby="entry-details"
      onKeyDown={({ key }) => {
        if (key === "Escape") close();
      }}
    >
      <h3 id="entry-details" ref={heading} tabIndex={-1}>
        {item}, bid {bid.letter}
      </h3>
      <div className={styles.fields}>
        <TextField name={`${name}.document`} label="Document" />
        <TextField name={`${name}.page`} label="Page" />
        {entry.standing === "included" ? (
          <ChoiceField
            name={`${name}.line`}
            label="Price line that holds it"
            hint="Other bids’ medians are taken from this line."
            choices={lines}
          />
        ) : null}
      </div>
      {lacksPrice(entry) ? (
        <div className={styles.fields}>
          <KindField<Plug["kind"]>
            name={`${name}.plug`}
            label="What stands in for its price"
            choices={plugs}
            templates={plugTemplates}
            className={styles.wide}
            fields={(kind) => <PlugFields name={`${name}.plug`} kind={kind} />}
          />
        </div>
      ) : null}
      <LongTextField name={`${name}.note`} label="Note" rows={1} className={styles.wide} />
      <button type="button" onClick={close}>
        Close the details
      </button>
    </section>
  );
}

function PlugFields({ name, kind }: { name: string; kind: Plug["kind"] }) {
  switch (kind) {
    case "none":
      return null;
    case "figure":
      return <PlainPriceFields name={`${name}.price`} what="Plug" />;
    case "median":
      return (
        <TextField
          name={`${name}.quantity`}
          label="Quantity, where the others price it by unit"
          hint="For instance “2,400 ft”. Empty: the median of their sums."
        />
      );
    case "question":
      return (
        <LongTextField
          name={`${name}.asked`}
          label="Question to the bidder"
          rows={2}
          className={styles.wide}
          hint="Empty: asked in usual words. It counts as nothing until there is a figure."
        />
      );
  }
}
