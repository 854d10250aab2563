/** Where files of a project are sent to and handed out. proxy.ts reads them too: other limits and rules hold there. */
export const uploadAddress = (project: string): string => `/project/${project}/attachments/upload`;

/** Handed out to be saved. */
export const fileAddress = (project: string, attachment: string): string =>
  `/project/${project}/attachments/${attachment}/file`;

/** Shown by the browser, cut off from everything of ours; a PDF opens at the page. */
export const viewAddress = (project: string, attachment: string, page: number | null = null): string =>
  `/project/${project}/attachments/${attachment}/view${page === null ? "" : `#page=${page}`}`;

export const takesFile = (path: string): boolean => /^\/project\/[^/]+\/attachments\/upload$/.test(path);

export const givesFile = (path: string): boolean => /^\/project\/[^/]+\/attachments\/[^/]+\/(?:file|view)$/.test(path);
