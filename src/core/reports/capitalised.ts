/** Text with its first letter as a capital. */
export function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Text that ends as a sentence does. */
export function stopped(text: string): string {
  return /[.!?…]$/.test(text) ? text : `${text}.`;
}
