/** Values as a line of bytes, with tabs between them. To join them as a string would copy all in V8's heap first. */
export function tabbed(values: readonly string[]): Buffer {
  const size = values.reduce((sum, value) => sum + Buffer.byteLength(value) + 1, 0);
  const line = Buffer.allocUnsafe(size);
  let end = 0;
  for (const value of values) {
    end += line.write(value, end);
    end = line.writeUInt8(0x09, end);
  }
  return line.subarray(0, -1);
}
