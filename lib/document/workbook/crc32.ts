const table = Uint32Array.from({ length: 256 }, (_, byte) => {
  let remainder = byte;
  for (let bit = 0; bit < 8; bit += 1) remainder = (remainder >>> 1) ^ (remainder & 1 ? 0xedb88320 : 0);
  return remainder;
});

/** The checksum that a ZIP file keeps of each part. @source ISO 3309, polynomial 0x04C11DB7 with bits reversed */
export function crc32(bytes: Uint8Array): number {
  let remainder = 0xffffffff;
  for (const byte of bytes) remainder = (remainder >>> 8) ^ (table[(remainder ^ byte) & 0xff] ?? 0);
  return (remainder ^ 0xffffffff) >>> 0;
}
