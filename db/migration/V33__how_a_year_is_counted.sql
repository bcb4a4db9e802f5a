-- How a year is counted for tax: when income counts, and when the cost of supplies does. A year without a row is counted as
-- the latest year before it that has one. The books know nothing of it.
create table tax_basis (
    tax_year integer not null,
    income varchar(10) not null,
    supplies varchar(12) not null,
    note varchar(2000) not null,
    constraint tax_basis_pk primary key (tax_year),
    constraint tax_basis_year_ck check (tax_year between 1900 and 9999),
    constraint tax_basis_income_ck check (income in ('SALE_DATE', 'CASH')),
    constraint tax_basis_supplies_ck check (supplies in ('WHEN_USED', 'WHEN_BOUGHT'))
);
