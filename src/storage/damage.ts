/** One thing that is not as the ledger says. */
export type Damage = { readonly where: string; readonly what: string; readonly whatToDo: string };
