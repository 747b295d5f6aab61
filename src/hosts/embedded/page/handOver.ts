/** Offers a file to the person at the browser. */
export function handOver(contents: Blob, fileName: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(contents);
  link.download = fileName;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

const XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

export function fileFromBase64(base64: string): Blob {
  const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
  return new Blob([bytes], { type: XLSX });
}
