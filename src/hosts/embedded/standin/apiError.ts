/** The codes of errors that the stand-in raises, as Excel names them: https://learn.microsoft.com/office/dev/add-ins/testing/application-specific-api-error-handling */
export type ApiErrorCode =
  | "GeneralException"
  | "InvalidArgument"
  | "InvalidObjectPath"
  | "InvalidOperation"
  | "ItemAlreadyExists"
  | "ItemNotFound"
  | "NotImplemented"
  | "PropertyNotLoaded";

/** An error as Office.js raises it: a code for programs, a message for developers. */
export class ApiError extends Error {
  override readonly name = "RichApi.Error";
  constructor(
    readonly code: ApiErrorCode,
    message: string,
  ) {
    super(message);
  }
}

export const notImplemented = (member: string): ApiError =>
  new ApiError("NotImplemented", `NotImplemented: ${member}. This page stands in for a part of Excel only.`);

export const invalid = (message: string): ApiError => new ApiError("InvalidArgument", message);
