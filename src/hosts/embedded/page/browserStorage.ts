const DATABASE = "woodlot-reckoner";
const STORE = "workbooks";

/** Keeps whole objects in this browser, by key. */
export interface BrowserStorage {
  read(key: string): Promise<unknown>;
  write(key: string, value: unknown): Promise<void>;
  remove(key: string): Promise<void>;
}

/** Where a browser keeps nothing for this page: nothing is found, and a save fails, which the page then says. */
export const noStorage: BrowserStorage = {
  read: () => Promise.resolve(undefined),
  write: () => Promise.reject(new Error("This browser keeps no data for this page.")),
  remove: () => Promise.resolve(),
};

export async function openBrowserStorage(): Promise<BrowserStorage> {
  const opening = indexedDB.open(DATABASE, 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore(STORE);
  const database = await answered(opening);

  return {
    read: (key) => answered(database.transaction(STORE).objectStore(STORE).get(key)),
    write: (key, value) => finished(database, (store) => store.put(value, key)),
    remove: (key) => finished(database, (store) => store.delete(key)),
  };
}

const answered = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error("The browser's storage did not answer."));
  });

const finished = (database: IDBDatabase, change: (store: IDBObjectStore) => void): Promise<void> =>
  new Promise((resolve, reject) => {
    const transaction = database.transaction(STORE, "readwrite");
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error ?? new Error("The browser's storage is full."));
    change(transaction.objectStore(STORE));
  });
