/** Removes and frees everything in a layer before it is drawn anew. */
export function emptyLayer(layer: { removeChildren(): { destroy(): void }[] }): void {
  for (const child of layer.removeChildren()) child.destroy();
}
