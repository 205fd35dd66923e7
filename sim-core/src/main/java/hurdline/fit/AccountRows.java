package hurdline.fit;

import hurdline.answer.RecordFileRow;
import hurdline.answer.RecordReasonRow;
import hurdline.answer.RecordRow;
import hurdline.records.Account;
import hurdline.records.Account.Verdict;
import java.util.List;

/** What became of the rows of records, as an answer has it. */
final class AccountRows {
  private final Account account;

  AccountRows(Account account) {
    this.account = account;
  }

  List<RecordFileRow> files() {
    return account.rows().entrySet().stream()
        .map(
            file ->
                new RecordFileRow(
                    file.getKey(),
                    file.getValue(),
                    account.count(file.getKey(), Verdict.USED),
                    account.count(file.getKey(), Verdict.JOINED),
                    account.count(file.getKey(), Verdict.SET_ASIDE)))
        .toList();
  }

  List<RecordReasonRow> reasons() {
    return account.reasons().stream()
        .map(
            one ->
                new RecordReasonRow(
                    one.file(),
                    one.verdict().word(),
                    one.count(),
                    one.reason(),
                    one.example().line(),
                    one.example().why()))
        .toList();
  }

  List<RecordRow> rows() {
    return account.entries().stream()
        .map(
            one ->
                new RecordRow(
                    one.file(), one.line(), one.verdict().word(), one.whatFor(), one.why()))
        .toList();
  }
}
