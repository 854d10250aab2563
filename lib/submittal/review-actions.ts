/**
 * Answers to a submittal in the trade's usual words, and what follows.
 * @source words as read in filed sections; what follows: common practice, no source
 */
export const reviewActions = {
  "no-exceptions-taken": { label: "No Exceptions Taken", next: "Work may go on.", isFinal: true },
  "make-corrections-noted": {
    label: "Make Corrections Noted",
    next: "Work may go on with the corrections.",
    isFinal: true,
  },
  "revise-and-resubmit": { label: "Revise and Resubmit", next: "A corrected version is handed in.", isFinal: false },
  rejected: { label: "Rejected", next: "Another product or document is handed in.", isFinal: false },
  "submit-specified-item": {
    label: "Submit Specified Item",
    next: "What the clause asks for is handed in.",
    isFinal: false,
  },
  "for-information-only": { label: "For Information Only", next: "It is kept and not reviewed.", isFinal: true },
} as const;

export type ReviewAction = keyof typeof reviewActions;
