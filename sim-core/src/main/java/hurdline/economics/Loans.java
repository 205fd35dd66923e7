package hurdline.economics;

import java.util.List;

/** Loans that are paid side by side, such as those on several things bought together. */
public record Loans(List<Loan> each) {
  public Loans {
    each = List.copyOf(each);
  }

  public double principal() {
    return each.stream().mapToDouble(Loan::principal).sum();
  }

  /** Owed after so many years, once their payments are made. */
  public double owedAfter(int year) {
    return each.stream().mapToDouble(loan -> loan.owedAfter(year)).sum();
  }

  /**
   * @param year counts from 1
   */
  public double interest(int year) {
    return each.stream().mapToDouble(loan -> loan.interest(year)).sum();
  }

  /**
   * @param year counts from 1
   */
  public double repayment(int year) {
    return each.stream().mapToDouble(loan -> loan.repayment(year)).sum();
  }
}
