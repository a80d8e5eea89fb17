# Checks a file of check vectors from R, through examples/call.mjs.
#
#   Rscript examples/call.R shared/steam-boiling.json
#
# Needs the package jsonlite, Node, and the built package. Numbers are compared where the unit is the same.
library(jsonlite)

arguments <- commandArgs(trailingOnly = FALSE)
here <- dirname(normalizePath(sub("^--file=", "", grep("^--file=", arguments, value = TRUE)[1])))
given <- commandArgs(trailingOnly = TRUE)
path <- if (length(given) > 0) given[1] else file.path(here, "..", "shared", "steam-boiling.json")

# All calls of a file in one process: one line in, one line out.
ask <- function(checks) {
  lines <- vapply(checks, function(check) {
    as.character(toJSON(list(call = check$call, input = check$input), auto_unbox = TRUE, digits = NA))
  }, character(1))
  answers <- system2("node", c(shQuote(file.path(here, "call.mjs")), "--lines"), input = lines, stdout = TRUE)
  lapply(answers, fromJSON, simplifyVector = FALSE)
}

agrees <- function(expected, found, tolerance) {
  if (is.list(expected)) {
    if (!is.null(expected$unit) && !identical(expected$unit, found$unit)) return(NA)
    keys <- if (is.null(names(expected))) seq_along(expected) else names(expected)
    return(all(vapply(keys, function(key) agrees(expected[[key]], found[[key]], tolerance), logical(1))))
  }
  if (!is.numeric(expected)) return(identical(expected, found))
  allowed <- 1e-12 * abs(expected)
  if (is.list(tolerance)) {
    allowed <- allowed + max(tolerance$absolute, 0) + max(tolerance$relative, 0) * abs(expected)
  }
  is.numeric(found) && abs(expected - found) <= allowed
}

checks <- fromJSON(path, simplifyVector = FALSE)$checks
answers <- ask(checks)
results <- mapply(function(check, found) {
  if (!is.null(check$expect$error)) return(identical(found$error$code, check$expect$error))
  agrees(check$expect, found, check$tolerance)
}, checks, answers)
cat(sum(results, na.rm = TRUE), "of", length(checks), "checks pass,", sum(is.na(results)), "in another unit\n")
for (check in checks[which(!results)]) cat("  fails:", check$id, "\n")
quit(status = if (any(!results, na.rm = TRUE)) 1 else 0)
