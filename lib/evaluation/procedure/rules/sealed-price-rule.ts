import { arePricesSealed } from "#lib/procedure";
import { saysPrice } from "../says-price";
import { breach, movesOf, procedureAfter, type Rule } from "./model";

/** While prices are sealed they stand in no bid, so that nothing that reads a bid can show them. */
export const sealedPriceRefusal: Rule = (attempt) => {
  const isSealed = arePricesSealed(procedureAfter(attempt));
  if (!isSealed)
    return movesOf(attempt, "sealed-prices").length === 0 ? null : breach("Prices are not sealed in this project.");
  const priced = movesOf(attempt, "bid").find(({ after }) => after !== null && saysPrice(after.model));
  if (priced === undefined) return null;
  const letter = priced.after?.model.letter ?? "";
  return {
    ...breach(
      `Prices of this project are sealed until they are opened, so bid ${letter} can’t hold any. Enter them on the page “Sealed prices” of the bid.`,
      ["prices"],
    ),
    text: "let-go",
  };
};
