/** The variable that names the file in which the trials of a run put down what they have counted; see run-total.ts. */
export const totalsFile = "EVENFIELD_FAULT_TOTALS";
