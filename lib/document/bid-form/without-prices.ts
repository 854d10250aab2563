import type { FilledForm } from "./model";
import { pricesTable } from "./sheets";

/** A filled form as it may be shown while prices are sealed: nothing of its prices is left, in cells and remarks as little as in its entries. */
export function withoutPrices(form: FilledForm): FilledForm {
  const spoken = `sheet “${pricesTable.sheet}”`;
  return {
    ...form,
    ...{ prices: [], statedTotal: "", statedTotalInWords: "" },
    cells: form.cells.filter(({ sheet }) => sheet !== pricesTable.sheet),
    remarks: [
      ...form.remarks.filter((remark) => !remark.includes(spoken)),
      `Prices are sealed in this project, so the ${spoken} is not shown and not imported here. Seal its prices on the page “Sealed prices” of the bid, from this same file.`,
    ],
  };
}
