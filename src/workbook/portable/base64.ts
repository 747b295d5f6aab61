/** A file as a text of base64; in pieces, because a call takes only so many arguments. */
export function base64Of(bytes: Uint8Array): string {
  const piece = 0x8000;
  let text = "";
  for (let from = 0; from < bytes.length; from += piece)
    text += String.fromCharCode(...bytes.subarray(from, from + piece));
  return btoa(text);
}
