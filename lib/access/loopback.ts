const octet = "(?:25[0-5]|2[0-4]\\d|1\\d\\d|[1-9]?\\d)";
const loopback = new RegExp(`^(?:localhost|127(?:\\.${octet}){3}|\\[::1\\])(?::\\d{1,5})?$|^::1$`, "i");

/**
 * True if a host, with or without a port, names this machine itself: localhost, 127.x.x.x or ::1. Serves for the address
 * the server listens on and for the Host header of a request, where a page elsewhere may have pointed its own name at
 * this machine.
 * @source RFC 1122 section 3.2.1.3, RFC 4291 section 2.5.3, RFC 6761 section 6.3
 */
export const isLoopbackHost = (host: string): boolean => loopback.test(host);
