/** The second server of the journeys, on which people sign in. playwright.config.ts starts it. */
export const sharedPort = Number(process.env.EVENFIELD_JOURNEYS_PORT ?? 3987) + 1;
export const sharedAddress = `http://127.0.0.1:${sharedPort}`;
export const sharedSecret = "an invented secret of the journeys, 0123456789";
