/** Files dropped on to a form are those that it sends, at once. */

/** Makes every place of the page a place to drop on. */
export const dropPlaces = (): void => {
  for (const place of document.querySelectorAll<HTMLFormElement>('form[data-drop]')) {
    const input = place.querySelector<HTMLInputElement>('input[type=file]');
    const button = place.querySelector<HTMLButtonElement>('button');
    place.addEventListener('dragover', (event) => {
      event.preventDefault();
      place.classList.add('over-it');
    });
    place.addEventListener('dragleave', () => place.classList.remove('over-it'));
    place.addEventListener('drop', (event) => {
      event.preventDefault();
      place.classList.remove('over-it');
      if (!input || !event.dataTransfer) return;
      input.files = event.dataTransfer.files;
      place.requestSubmit(button);
    });
  }
  // A file that misses its place must not take the page away.
  for (const name of ['dragover', 'drop']) document.addEventListener(name, (event) => event.preventDefault());
};
